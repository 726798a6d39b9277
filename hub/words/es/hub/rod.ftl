### Why a text is no reading of a rod.

negative = «{ $text }» queda debajo del pie del estadal. Escríbala sin el menos; si el terreno está más alto que el láser, póngalo más arriba.
above_top = «{ $text }» pasa de la punta del estadal { $rod }, que mide { $length }. Revise el punto decimal y cuál estadal es.
inches_past_twelve = «{ $text }» tiene { $inches } pulgadas: después de los pies van menos de 12. Revise los pies y luego las pulgadas.
how-hundredths = El estadal { $rod } está marcado en pies y centésimas: escríbala como 5.42.
how-eighths = El estadal { $rod } está marcado en pies, pulgadas y octavos: escríbala como 7-10 3/8.
how-metres = El estadal { $rod } está marcado en metros: escríbala como 1.234.
empty = No se escribió ninguna lectura. { $how }
not_a_reading = «{ $text }» no es una lectura del estadal { $rod }. { $how }
