### What a pothole is refused for. Portuguese, read by no native speaker.

where_it_was_bared = onde foi exposta: uma marca, ou um lugar
from_where_marked = Isso fica a { $away } de onde { $utility } está marcada. Qual linha é?
give_pipe_outside_with_its = Dê o diâmetro externo do tubo com sua unidade, como 2 in ou 0.35 ft.
