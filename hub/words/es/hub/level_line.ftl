### Why a line of levels does not close.

empty = La nivelación no tiene puestas. Dé por lo menos una lectura atrás y una adelante.
too_far = La nivelación no cierra por { $misclosure }; se permite { $allowed }. Nivele otra vez: no se ajustó nada.
distances = Las distancias deben subir desde más de 0 hasta el largo de la línea, { $total }. Dé la distancia de cada punto desde el inicio.
