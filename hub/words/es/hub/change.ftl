### What a change of the site is refused for.

why_site_changes_whose_word = por qué cambia la obra y quién lo ordena
face_is_left = { $zone } se dejó: hubo que alejarse del talud. Antes de cambiarlo o quitarlo, la persona competente lo inspecciona en TALUDES y dice por qué se vuelve.
