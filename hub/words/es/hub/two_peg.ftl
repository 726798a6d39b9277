### What is wrong with a two-peg test.

equal_sights = Las dos estacas están a { $distance }: con visuales iguales no se nota la inclinación. Póngase cerca de una y lea las dos otra vez.
nearly_equal_sights = Las estacas están a { $a } y { $b }: visuales tan parecidas muestran errores de lectura y no la inclinación. Póngase cerca de una, que la visual corta sea a lo más cuatro quintos de la larga.
negative = La distancia a una estaca es { $distance }. Dé las dos distancias, de cero o más.
no_distance = La distancia es { $distance }. Dé la distancia del láser al estadal, mayor que cero.
