### What a change of the site is refused for. Portuguese, read by no native speaker.

why_site_changes_whose_word = por que a obra muda, e por palavra de quem
face_is_left = Todos tiveram que se afastar do talude { $zone }. Antes de mudá-lo ou retirá-lo, a pessoa competente o inspeciona em TALUDES e diz por que o trabalho continua.
