### Spanish: what is counted: hours, loads, gravel, tests, aim. What each variable is stands in the English file.

spot = Una lectura vale por, pies cuadrados
loads = Cargas

way-out = SALE
way-in = ENTRA
how = ¿Cómo se midió?
takeBack = QUITAR
low = muy hondo por { $yards } yd³
order = PEDIR
allMachines = Todas las máquinas
within = { $percent } % queda dentro de la tolerancia
next = A quién hay que ir
nobodyNext = Nadie hace falta en los próximos diez minutos.
waits = { $machine } espera desde { $time }
lookBy = { $machine } en { $mark }: mire antes de { $time }
arrives = { $mark } a nivel como a las { $at } ({ $from } a { $to })
arrivesHeld = { $mark }: faltan { $minutes } min de excavar; está parada
borrowed = paso de sus otras marcas
later = más tarde
tests = Pruebas de suelo

standing-passes = PASA
standing-fails = NO PASA
standing-void = NO VALE
patches = Parches
patchLine = { $size } ft, { $cy } yd³

step-needed = FALTA
step-filled = LLENO
step-compacted = COMPACTADO
step-tested = PROBADO
step-done = TERMINADO
liftsOf = { $has } de { $of } capas apisonadas
lifts = Capas apisonadas
work = TRABAJO
waitTitle = ¿Qué espera?

wait-truck = CAMIONES
wait-attachment = HERRAMIENTA
wait-broken = DESCOMPUESTA
wait-parked = ESTACIONADA
wait-other = OTRA COSA
again = YA TRABAJA
