### What a pothole is refused for.

where_it_was_bared = dónde se destapó: una marca o un lugar
from_where_marked = Eso queda a { $away } de donde está marcada { $utility }. ¿Cuál línea es?
give_pipe_outside_with_its = Dé el diámetro exterior con su unidad, como 2 in o 0.35 ft.
