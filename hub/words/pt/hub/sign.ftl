### What a signature under a day is refused for. Portuguese, read by no native speaker.

close_the_day_first = Primeiro feche o dia; depois assine.
has_signed_this_day = { $name } já assinou este dia. O que falta dizer agora é uma emenda.
