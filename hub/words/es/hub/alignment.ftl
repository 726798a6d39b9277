### What is wrong with an alignment or a station on it.

not_a_station = «{ $text }» no es una estación. Escriba los cientos de pies, un más y dos cifras, como 12+34.56.
no_pieces = El eje no tiene ningún tramo. Dé por lo menos una recta o un arco.
no_length = El tramo { $number } del eje termina donde empieza. Quítelo o dé su final.
radius_differs = El tramo { $number } del eje es un arco con radio de { $at_start } al inicio y { $at_end } al final. Revise su centro y su final.
past_end = El lugar queda { $by } más allá del { $before ->
        [true] inicio
       *[false] final
    } del eje, que va de { $from } a { $to }. Escoja un lugar al lado del eje o pida que lo alarguen.
at_centre = El lugar es el centro de un arco: no tiene una sola estación. Escoja un lugar más cerca del eje.
past_centre = La distancia de { $offset } pasa del centro del arco, cuyo radio es { $radius }. Dé una distancia menor o el otro lado.
