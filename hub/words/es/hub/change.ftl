### What a change of the site is refused for.

why_site_changes_whose_word = por qué cambia la obra y quién lo ordena
