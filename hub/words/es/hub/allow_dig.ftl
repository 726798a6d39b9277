### What a leave to dig is refused for.

why_dig_goes_whose_word = por qué se sigue excavando y quién lo ordena
which_mark_dig_goes = en cuál marca se sigue excavando: el permiso es solo para ese lugar
