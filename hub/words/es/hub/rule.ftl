### What a ruling is refused for.

why_it_is_ruled_so = por qué se decide así
this_mark_read_again_after = Esta marca se leyó otra vez después de esa decisión.
