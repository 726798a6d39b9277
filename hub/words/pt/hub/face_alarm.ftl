### What an alarm at a face is refused for. Portuguese, read by no native speaker.

people_had_get_away_from = Todos tiveram que se afastar outra vez deste talude depois do que esta tela mostrava.
