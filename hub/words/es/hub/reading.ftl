### What a reading is refused for.

say_whose_reading_as_paper = Diga de quién es la lectura, como está en el papel: de 1 a { $longest_name } letras.
did_not_stand_yet_time = { $id } aún no estaba puesta a esa hora, o tenía otra altura. Elija la puesta de la hoja o corrija la hora.
mark_this_site_has_its = { $mark } es una marca de esta obra y ya tiene su lugar. Quite el nombre o dé otro a este lugar.
tapes_lie_one_line_place = { $name }: las cintas quedan en una línea y el lugar se corre. Tome otro par de marcas.
give_most_three_readings_one = Dé a lo más tres lecturas de un estadal que se mece.
readings_rocked_rod_differ_by = Las lecturas del estadal difieren más de lo que da una inclinación. Póngalo a plomo y lea otra vez.
has_no_target = { $mark } no tiene rasante: ahí no se puede fijar el receptor. Lea el estadal.
not_number_tenths = «{ $text }» no es un número de décimas. Marque cuántas décimas está alto u hondo el terreno, como 2 o 3.5.
at_mark = { $mark }: { $what }
