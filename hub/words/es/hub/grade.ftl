### What is wrong with a grade.

too_few_corners = El perfil tiene { $corners } puntos. Dé por lo menos dos, cada uno con estación y cota.
corner_order = El punto del perfil en { $station } no queda después del anterior. Dé los puntos en orden, cada uno una vez.
curve_does_not_fit = La curva vertical en { $station } mide { $length } y no cabe entre sus vecinas. Revise su largo; el primer y el último punto no llevan curva.
step_misplaced = El escalón en { $station } queda fuera, antes del anterior o en una curva vertical. Revise su estación.
past_end = La estación { $station } queda { $by } fuera del perfil, que va de { $from } a { $to }. Escoja un lugar del perfil o pida que lo alarguen.
uphill = De { $from } a { $to } el tubo sube { $by } hacia donde debe correr. Revise el signo de la pendiente y cuál extremo es la salida.
never_daylights = El terreno sube { $rise } ft por pie hacia afuera y una cara de { $slope } a 1 nunca lo alcanza. Dé una cara más parada o el perfil del terreno más afuera.
almost_parallel = Una cara de { $slope } a 1 va casi paralela al terreno que sube { $rise } ft por pie: no se encuentran bastante cerca para decir dónde. Dé una cara más parada o el perfil del terreno más afuera.
empty_face = La cara no tiene partes o una no tiene alto ni ancho. Dé el alto y el ancho de cada parte, del pie hacia afuera.
beside_face = El lugar queda { $by } { $before ->
        [true] delante del pie
       *[false] detrás de la corona
    } de la cara, que mide { $width } de ancho. Escoja un lugar en la cara.
no_plane = El pliegue no tiene planos. Dé por lo menos uno.
what-pipe_wall = espesor del tubo
what-bedding = espesor de la cama
what-outside_diameter = diámetro exterior del tubo
what-beside_the_pipe = espacio al lado del tubo
what-faces_rise = alto de la cara
what-faces_run = ancho de la cara
what-grounds_rise = pendiente del terreno
what-faces_slope = talud de la cara
what-planes_rise = pendiente del plano
what-depth = alto de la excavación al pie
negative_size = El { $what } es { $value }. Dé cero o más.
not_a_number = Dato «{ $what }»: { $value }. Dé un número, de cero o más si es de una cara.
