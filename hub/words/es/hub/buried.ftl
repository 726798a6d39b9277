### What is wrong with a buried line.

too_few_places = Una línea enterrada lleva dos puntos o más; esta tiene { $places }.
upside_down = Lo de arriba, { $top }, queda bajo lo de abajo, { $bottom }. Revise cuál es cuál.
what-outside_diameter = diámetro exterior
what-zone = franja al lado de la línea
negative = Medida «{ $what }»: { $value }. Dé cero o más.
