### What a gravel patch is refused for. Portuguese, read by no native speaker.

has_no_reading_take_depth = { $mark } não tem leitura de onde tirar a fundura. Leia, ou digite a fundura.
is_not_filled_yet = { $name } ainda não está cheio. Encha, depois compacte em { $lifts } camadas.
has_of_lifts_rammed = { $name } tem { $lifts } de { $wanted } camadas compactadas. Anote cada camada; a compactação e os testes o fazem avançar.
