### Spanish: the settings of a screen. What each variable is stands in the English file.

screen = PANTALLA
language = Idioma
units = Unidades

unitNames-tenths = Décimas de pie
unitNames-feet_inches = Pies y pulgadas
unitNames-millimetres = Milímetros
light = Luz
sun = SOL
dusk = TARDE
voice = Órdenes habladas
on = SÍ
off = NO
