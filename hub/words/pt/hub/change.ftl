### What a change of the site is refused for. Portuguese, read by no native speaker.

why_site_changes_whose_word = por que a obra muda, e por palavra de quem
