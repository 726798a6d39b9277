### Spanish: what ground and supervisor share. What each variable is stands in the English file.

now = AHORA
change = CAMBIAR
no = NO
benchmarks = BANCOS
machines = Máquinas
lasers = Láseres
people = Teléfonos unidos
why = ¿Por qué? Queda en el registro.
rule = DECIDIR
screenShows = { $who }, pantalla a la vista
screenNone = sin teléfono en la cabina
screenHiddenBy = { $who }, pantalla oculta
screenLostBy = { $who }, sin enlace
aim = Puntería
revision = r{ $n }
layers = Capas
mark = Marca
visitor = Usted mira. PARE también le sirve.
