### The sides on which machines keep out, and what is refused of them.

north = norte
north_east = noreste
east = este
south_east = sureste
south = sur
south_west = suroeste
west = oeste
north_west = noroeste
takes_two_machines_somebody_has = Se necesitan dos máquinas, y que alguien diga dónde está cada una.
not_proposed_any_more = Eso ya no está propuesto. Mire la pantalla.
