### What is wrong with a surface.

no_triangles = La superficie no tiene triángulos. Dé por lo menos tres puntos que no estén en una recta.
too_wide = La superficie abarca { $span } y se calculan exactos a lo más 100,000 ft. Revise la unidad y los puntos lejanos.
two_elevations = En este { $east }, norte { $north } la superficie tiene dos cotas, { $one } y { $other }. Quite una o mueva el pie de la cara vertical 0.01 ft hacia afuera.
no_such_point = Se nombra el punto número { $number }, pero hay { $points }, contados desde 0. Revise la lista.
lines_cross = La línea de este { $east }, norte { $north } a este { $to_east }, norte { $to_north } cruza otra. Déles un punto donde se encuentran.
too_few_corners = Un contorno o hueco tiene { $corners } esquinas. Dé por lo menos tres, en orden.
ring_crosses = Un contorno o hueco se cruza a sí mismo. Dé sus esquinas en orden, caminando alrededor.
no_area = El triángulo { $number }, contado desde 0, no tiene área. Quítelo.
overlap = Hay triángulos encimados a lo largo de la línea de este { $east }, norte { $north } a este { $to_east }, norte { $to_north }. Pida que exporten otra vez la superficie.
tangled = Las orillas de la superficie están tan encimadas que no se puede revisar. Pida que la exporten otra vez, sin astillas.
outside = El lugar queda a { $by } de la orilla de la superficie, fuera de ella o en un hueco. Aquí no hay rasante. Escoja un lugar en la superficie.
