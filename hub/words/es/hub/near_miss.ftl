### What a near miss is refused for.

what_happened_what_done_about = qué pasó y qué se hizo al respecto
