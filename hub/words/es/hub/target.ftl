### What is wrong with a target.

past_end = La estación { $station } queda { $by } más allá del { $before ->
        [true] inicio
       *[false] final
    }: el tramo va de 0 a { $length }. Escoja una marca del tramo o pida que lo alarguen.
outside_boundary = El lugar queda { $by } fuera del contorno de la rasante. Escoja una marca adentro o pida que revisen el contorno.
no_surface = La rasante no dice de qué es la cota. Nombre la superficie, como corona de zapata.
layer_unnamed = La capa { $number } desde arriba no tiene nombre. Nómbrela, como grava.
layer_thickness = La capa «{ $name }» mide { $thickness }: una capa mide más de 0 y a lo más 5 ft. Revise la unidad y el punto.
no_direction = El inicio del tramo y el punto hacia donde va son el mismo. Dé otro punto más adelante.
no_length = El tramo mide { $length }. Dé su largo desde 0 hasta el final, más de cero.
no_width = Los anchos del tramo son { $left } a la izquierda y { $right } a la derecha. Dé los dos de cero o más, uno de ellos más de cero.
no_steps = El tramo no tiene cota. Dé por lo menos la que vale desde 0.
first_step = La primera cota vale desde { $from }. Dé la que vale desde 0.
step_order = El escalón en { $station } no queda más adelante que el anterior. Dé los escalones en orden, cada uno una vez.
step_past_end = El escalón en { $station } queda más allá del final del tramo, en { $length }. Revise la estación y el largo.
step_window = El escalón en { $station } tiene una holgura menor que cero. Dé cuánto puede moverse su cara para cada lado.
too_few_corners = El contorno tiene { $corners } esquinas. Dé por lo menos tres, en orden, o ninguna.
boundary_crosses = El contorno se cruza a sí mismo. Dé sus esquinas en orden, caminando alrededor.
no_such_surface = Esta rasante no tiene «{ $name }». Tiene: { $known }.
contour_band = La holgura de la curva de nivel es { $band }. Dé cuánto puede desviarse el recorrido, más de cero y a lo más 0.5 ft.
no_stations = Esta rasante no tiene estaciones. Dé el lugar por una marca, por dos cintas o por pasos.
beside_run = El lugar queda { $by } fuera de la orilla { $side ->
        [left] izquierda
       *[right] derecha
    } del tramo. Escoja una marca del tramo o pida que revisen su ancho.
too_steep = El plano sube { $rise } ft por pie hacia el { $side ->
        [east] este
        [north] norte
       *[outlet] desagüe
    }. Escriba 2 % como 0.02; más de 1 es un talud, no una rasante.
undercut-no_name = La sobreexcavación «{ $name }» no tiene nombre. Nómbrela.
undercut-no_material = La sobreexcavación «{ $name }» no dice con qué se rellena. Nombre el material.
undercut-depth = La sobreexcavación «{ $name }» debe medir más de 0 y a lo más 10 ft de hondo. Revise la unidad y el punto.
