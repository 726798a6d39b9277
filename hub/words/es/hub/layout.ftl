### What is wrong with layout: lines, strings, tapes, ties, marks, widths, steps.

no_cross-too_few_corners = Una línea lleva por lo menos dos esquinas; esta tiene { $corners }. Dé sus extremos.
no_cross-corner_twice = Las esquinas { $number } y { $next } de la línea son el mismo punto. Quite una.
square-impossible = Diagonales de { $a_to_c } y { $b_to_d } no salen con lados de { $base } y { $across }. Mida otra vez lados y diagonales.
tape-no_tape = La cinta marca { $slope }. Dé lo que marca sobre la pendiente, más de 0.
tape-too_steep = La cinta marca { $slope }, pero sus puntas están a { $rise } de altura: no puede ser. Revise las dos medidas y sus unidades.
width-rule = El ancho mínimo es { $least }, con la orilla estricta a { $strict } de la línea. Dé un ancho mayor que 0 y una orilla desde 0.
string-no_length = El hilo mide { $length }. Dé la distancia entre los puentes, más de 0.
string-not_under = A { $along } no hay hilo: mide { $length }. Mida desde el primer puente.
string-not_level = El segundo puente queda { $by } más { $higher ->
        [true] alto
       *[false] bajo
    } que el primero; se permite { $allowed }. Lea otra vez los dos y mueva uno.
string-above_string = La excavación queda { $by } arriba del hilo. Revise la cota de los puentes y la rasante.
step_window-no_forms = No hay anchos de cimbra. Ponga los que tiene el equipo de cimbra.
step_window-width = Una cimbra de { $width } no sirve. Dé anchos mayores que 0 y un ajuste de 0 o más.
step_window-drawn = El escalón está dibujado a { $drawn } de la esquina donde empieza la cimbra. Dé más de 0 y a lo más 1,000 ft.
step_window-too_many = Estos anchos dan demasiadas medidas. Dé menos anchos o una esquina más cerca.
step_window-none_near = Con esta cimbra no sale nada a { $allowed } de { $drawn }: lo más cerca es { $nearest }. Pregunte al equipo de cimbra antes de excavar.
marks-old_paint = De pintura vieja no se mide: la máquina la movió. Mida de una estaca, un hilo o el control.
marks-scraped = Esa marca se borró y no se ha puesto otra vez. Póngala primero, o mida de una estaca, un hilo o el control.
marks-too_deep = Esa marca ya está a { $depth } marcas del control, la estaca o el hilo; { $deepest } es lo más. Mida de una estaca, un hilo o el control.
marks-differs = La segunda medida difiere { $by }; aquí se permite { $allowed }. Mida las dos otra vez, de otra estaca.
marks-doubt = Una duda es un número de pies de 0 o más, como 0.02.
stake-on_the_mark = La estaca está sobre su marca, donde pasa el bote. Póngala a un lado y dé la distancia.
stake-before_start = La estación { $station } queda antes del inicio de la línea. Dé una desde 0.
tie-no_tape = Una cinta de { $distance } no sirve. Mida del punto conocido a la marca, más de 0.
tie-one_base = Las dos cintas salen del mismo punto. Sujete la segunda en otra estaca.
tie-too_short = Las cintas no se encuentran: les faltan { $by } entre las dos. Revise las dos medidas y en qué estacas se detuvieron.
tie-too_long = Las cintas no se encuentran: a una le sobran { $by }. Revise las dos medidas y en qué estacas se detuvieron.
tie-paces = { $paces } de { $of } pasos no quedan entre las marcas. Cuente los pasos al lugar y luego a la segunda marca.
no_cross-what-tape = la cinta
no_cross-what-string = el hilo
no_cross-what-line = la línea
no_cross-what-factor = el factor k
no_cross-doubt = La duda de { $what } debe ser un número de pies de 0 o más, como 0.02.
square-what-base = La base A–B
square-what-side = El lado B–C
square-what-diagonal_ac = La diagonal A–C
square-what-diagonal_bd = La diagonal B–D
square-not_taped = { $what } mide { $length }. Mídala y dé más de 0.
