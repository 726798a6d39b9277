### What a tape to an edge is refused for.

cant_tape_from_line_edge = «{ $typed }» no puede ser la cinta de la línea a la orilla. Escríbala sin signo, hasta 50 ft, y diga si la orilla pasa la línea.
