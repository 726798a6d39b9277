### Portuguese, read by no native speaker: the settings of a screen. What each variable is stands in the English file.

screen = TELA
language = Idioma
units = Unidades

unitNames-tenths = Décimos de pé
unitNames-feet_inches = Pés e polegadas
unitNames-millimetres = Milímetros
light = Luz
sun = SOL
dusk = TARDE
voice = Ordens faladas
on = SIM
off = NÃO
