### Portuguese, read by no native speaker: what ground and supervisor share. What each variable is stands in the English file.

now = AGORA
change = MUDAR
no = NÃO
benchmarks = RNs
machines = Máquinas
lasers = Lasers
people = Celulares na equipe
why = Por quê? Fica no registro.
rule = DECIDIR
screenShows = { $who }, tela à vista
screenNone = sem celular na cabine
screenHiddenBy = { $who }, tela oculta
screenLostBy = { $who }, sem conexão
aim = Pontaria
revision = r{ $n }
layers = Camadas
mark = Marca
visitor = Você só olha. PARE também funciona para você.
