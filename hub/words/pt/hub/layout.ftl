### What is wrong with layout: lines, strings, tapes, ties, marks, widths, steps. Portuguese, read by no native speaker.

no_cross-too_few_corners = Uma linha precisa de pelo menos dois cantos; esta tem { $corners }. Dê suas pontas.
no_cross-corner_twice = Os cantos { $number } e { $next } da linha são um só lugar. Tire um deles.
square-impossible = Diagonais de { $a_to_c } e { $b_to_d } não pertencem a lados de { $base } e { $across }. Meça de novo lados e diagonais.
tape-no_tape = A trena dá { $slope }. Dê o que ela marca ao longo do declive, mais de 0.
tape-too_steep = A trena dá { $slope }, mas suas pontas estão a { $rise } uma da outra em altura: nenhuma trena fica assim. Confira as duas medidas e suas unidades.
width-rule = A largura mínima é { $least }, com a borda estrita a { $strict } da linha. Dê uma largura acima de 0 e uma borda de 0 para cima.
string-no_length = O fio mede { $length }. Dê a distância entre os gabaritos, mais de 0.
string-not_under = A { $along } não há fio em cima: ele mede { $length }. Meça a partir do primeiro gabarito.
string-not_level = O segundo gabarito está { $by } mais { $higher ->
        [true] alto
       *[false] baixo
    } que o primeiro; para um fio em nível são permitidos { $allowed }. Leia os dois de novo e mova um.
string-above_string = A escavação fica { $by } acima do fio. Confira a cota dos gabaritos e o greide.
step_window-no_forms = Nenhuma largura de fôrma foi dada. Ponha as que a equipe de fôrmas tem.
step_window-width = Uma fôrma de { $width } não é fôrma. Dê larguras acima de 0 e um calço de 0 ou mais.
step_window-drawn = O degrau está desenhado a { $drawn } do canto onde as fôrmas começam. Dê mais de 0, e no máximo 1,000 ft.
step_window-too_many = Estas larguras dão medidas demais para procurar. Dê menos larguras, ou um canto mais perto.
step_window-none_near = As fôrmas não dão nenhuma medida a { $allowed } de { $drawn }: a mais perto é { $nearest }. Pergunte à equipe de fôrmas antes de cavar.
marks-old_paint = De pintura velha não se mede: a máquina a moveu. Meça de um piquete, um fio ou do controle.
marks-scraped = Essa marca foi apagada e não foi posta de novo. Ponha primeiro, ou meça de um piquete, um fio ou do controle.
marks-too_deep = Essa marca já está a { $depth } marcas do controle, piquete ou fio; { $deepest } é o máximo. Meça de um piquete, um fio ou do controle.
marks-differs = A segunda medida difere { $by }; aqui são permitidos { $allowed }. Meça as duas de novo, de outro piquete.
marks-doubt = Uma dúvida deve ser um número de pés de 0 ou mais, como 0.02.
stake-on_the_mark = O piquete está sobre sua marca, onde a caçamba passa. Ponha-o para um lado e dê a distância.
stake-before_start = A estaca { $station } fica antes do início da linha. Dê uma estaca de 0 para cima.
tie-no_tape = Uma trena de { $distance } não é amarração. Meça do lugar conhecido até a marca, mais de 0.
tie-one_base = As duas trenas estão presas em um só lugar. Prenda a segunda em outro piquete.
tie-too_short = As trenas não se encontram: juntas faltam { $by }. Confira as duas medidas e em que piquetes foram presas.
tie-too_long = As trenas não se encontram: uma sobra { $by } para a outra. Confira as duas medidas e em que piquetes foram presas.
tie-paces = { $paces } de { $of } passos não ficam entre as marcas. Conte os passos até o lugar, depois até a segunda marca.
no_cross-what-tape = trena
no_cross-what-string = fio
no_cross-what-line = linha
no_cross-what-factor = fator k
no_cross-doubt = Dúvida (“{ $what }”): deve ser um número de pés de 0 ou mais, como 0.02.
square-what-base = A base A–B
square-what-side = O lado B–C
square-what-diagonal_ac = A diagonal A–C
square-what-diagonal_bd = A diagonal B–D
square-not_taped = { $what } mede { $length }. Meça com a trena e dê mais de 0.
