### Spanish: keys of the keyboard on the office's pages, and the panel that lists them.

help = TECLAS
title = Teclas del teclado
single = Las letras sueltas actúan
singleNote = Si se quita, las letras no hacen nada; Entrar, Esc y las flechas siguen actuando.
search = buscar
up = la línea anterior
down = la línea siguiente
open = abrir la línea
shut = cerrar el asiento
all = quitar el filtro
these = estas teclas
before = el momento anterior
next = el momento siguiente
mark = ir a una marca
play = seguir y pausar
earlier = un cuarto de segundo antes
later = un cuarto de segundo después
