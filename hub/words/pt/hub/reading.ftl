### What a reading is refused for. Portuguese, read by no native speaker.

say_whose_reading_as_paper = Diga de quem é a leitura, como está no papel: de 1 a { $longest_name } letras.
did_not_stand_yet_time = { $id } ainda não estava instalada a essa hora, ou estava em outra altura. Escolha a estação da folha, ou corrija a hora.
mark_this_site_has_its = { $mark } é uma marca desta obra e tem seu próprio lugar. Deixe o nome de fora, ou dê outro a este lugar.
tapes_lie_one_line_place = { $name }: as trenas ficam em uma só linha e o lugar escorrega. Tome outro par de marcas.
give_most_three_readings_one = Dê no máximo três leituras de uma mira balançada.
readings_rocked_rod_differ_by = As leituras da mira balançada diferem mais do que uma inclinação pode dar. Segure a prumo e leia de novo.
has_no_target = { $mark } não tem greide: ali não se pode pôr um receptor na cota. Leia a mira.
not_number_tenths = “{ $text }” não é um número de décimos. Toque quantos décimos o terreno está alto ou fundo, como 2 ou 3.5.
at_mark = { $mark }: { $what }
