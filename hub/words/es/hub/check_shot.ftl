### What a check shot is refused for.

shot_made_before_laser_put = Esa lectura se hizo antes de que el láser quedara en duda: no comprueba nada de ahora.
