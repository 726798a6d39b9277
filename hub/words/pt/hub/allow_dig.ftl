### What a leave to dig is refused for. Portuguese, read by no native speaker.

why_dig_goes_whose_word = por que a escavação segue, e por palavra de quem
which_mark_dig_goes = em qual marca a escavação segue: a permissão é só para esse lugar
