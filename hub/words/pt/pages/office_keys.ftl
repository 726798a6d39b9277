### Portuguese, read by no native speaker: keys of the keyboard on the office's pages, and the panel that lists them.

help = TECLAS
title = Teclas do teclado
single = Letras sozinhas agem
singleNote = Com isto desligado, as letras não fazem nada; Enter, Esc e as setas continuam agindo.
search = procurar
up = a linha anterior
down = a linha seguinte
open = abrir a linha
shut = fechar o lançamento
all = tirar o filtro
these = estas teclas
before = o que foi fora do comum, anterior
next = o que foi fora do comum, seguinte
mark = ir a uma marca
play = tocar e pausar
earlier = um quarto de segundo antes
later = um quarto de segundo depois
