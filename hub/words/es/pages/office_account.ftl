### Spanish: the account, for the supervisor. What each variable is stands in the English file.

tab = CUENTAS
noPrices = Sin lista de precios: las horas van sin dinero. Ponga los precios de la obra.
prices = PRECIOS
pricesTitle = Los precios de la obra
pricesNote = Nada se adivina: lo que queda vacío no se cuenta.
machineHour = { $machine }, la hora con operador
truckHour = Un camión, la hora
groundHour = Un ayudante, la hora
truckYards = Un camión lleva, yardas cúbicas sueltas
truckTons = Lo que puede llevar un camión por peso, toneladas
loosePcf = { $name } en el camión, libras por pie cúbico
gravelTon = Grava, la tonelada puesta
gravelPlaced = Grava, el pie cúbico tendido y apisonado
bearing = Capacidad pedida, lb/ft²
shallow = Un punto alto cuesta
shallowRock = Un punto alto en roca cuesta
tooDeep = Un punto muy hondo cuesta
save = PONER
badPrice = Escriba números, como 195 o 2.60.
hours = Horas y esperas
noHours = Ninguna máquina ha trabajado todavía.
hoursNote = Del registro, hasta su última línea: excavar es lo que nadie llamó de otro modo.

doing-digging = excava
doing-look = espera que miren
doing-stopped = PARE
doing-laser_hold = láser en duda
doing-target_hold = rasante nueva sin ver
doing-cant = no puede seguir
doing-truck = espera camiones
doing-attachment = cambia herramienta
doing-broken = descompuesta
doing-parked = estacionada
doing-other_wait = espera
doing-screen_lost = a señas
cost = Costo del día
costOf-machine = { $what } excavando
costOf-waiting = Espera: { $what }
costOf-loads = Cargas: { $what }
costOf-gravel = Grava, { $what } t
costOf-patches = Parches, { $what } yd³ al precio ya puesto
dayCost = El día
jobCost = La obra hasta hoy
withoutRate = Sin tarifa para { $machines }: no entra en la suma.
noLoads = No se ha contado ninguna carga.
trucksOf =
    { $n ->
        [one] 1 camión
       *[other] { $n } camiones
    }
looseYards = { $yards } yd³ sueltas
tonsOf = { $tons } t
ticketsMissing = { $n } sin boleto
agrees = boletos { $percent } % de lo contado

limit-brim = llenas al ras
limit-weight = al peso permitido del camión, no llenas
limit-not_weighed = al ras: no se cuenta lo que puede pesar
measuredIs = medido { $bank } yd³ en banco, { $loose } sueltas, { $loads } cargas
countedBy = contado { $percent } % de lo medido
differs = MÁS DE 10 % DE DIFERENCIA: pregunte
measure = MEDIDO
measureTitle = Suelo medido en banco
bankYards = Yardas cúbicas en banco, excavadas hasta hoy
ticket = BOLETO
ticketOf = Boleto de { $material }
ticketNumber = Número de boleto
ticketYards = Yardas cúbicas en el boleto (puede quedar vacío)
ticketTons = Toneladas en el boleto (puede quedar vacío)
takenBack = quitada
amountOwed = sin cantidad: la dice su boleto
soilLeft = Suelo por sacar
soilLeftOf = { $target }: { $cut } yd³ en banco{ $loose }
looseOf = , { $loose } sueltas
soilRead = { $read } de { $marks } marcas leídas; las otras no se cuentan
gravel = Grava
noGravel = La lista de precios no tiene grava.
gravelParts = del plano { $nominal } + puntos bajos { $low } + parches { $patches } yd³
mean = Esperado
enough = Alcanza 9 de 10 veces
gravelLine = { $tons } t · { $loads } { $loads ->
        [one] carga
       *[other] cargas
    } · { $cost }
ordered = Pedidas { $ordered } t, llegaron { $came } t
short = FALTAN { $tons } t: pida más antes de que cierre la planta
orderTitle = Pedir grava
orderTons = Toneladas
orderNote = De dónde, con quién se acordó
landings = Dónde quedan las pasadas de acabado
noLandings = Aún no hay pasada de acabado: es la primera lectura tras una orden de 3½ décimas o menos.
landsAt = { $mean } ft en promedio, ± { $sd } ft, { $n } { $n ->
        [one] pasada
       *[other] pasadas
    }
aimAt = Apunte a { $aim } ft
aimRock = en roca { $aim } ft
aimSure = con tan pocas pasadas queda entre { $from } y { $to } ft
aimSaves = un punto cuesta entonces { $cost }, { $onTarget } en la rasante
aimNoPrices = Para decir a dónde apuntar faltan los precios de grava, de un punto alto y de uno muy hondo.
curve = Lo que cuesta un punto según dónde queda el promedio, pies desde la rasante

surfaces-trimmed = en suelo perfilado
surfaces-tooth_marked = en suelo con marcas de dientes
surfaces-hard_or_rock = en suelo duro o roca
noTests = Aún no hay prueba de suelo.
replaced = ya se probó otra vez
voidTest = ANULAR
voidWhy = ¿Por qué ya no vale?
voidMoved = el suelo se movió { $by } ft
voidRevised = { $target } se cambió
voidRain = le llovió
voidWater = estuvo bajo agua
voidSlough = { $zone } se vino abajo al lado
voidLaser = { $setUp } se había movido
undercutOf = { $mark }: excave { $depth } ft más hondo, { $cy } yd³ de { $material }
confirmUndercut = PONER EN VIGOR
undercutWhy = ¿Por orden de quién?
noPatches = No hace falta ningún parche.
liftLine = { $on }, capa { $lift }: { $thick } ft, { $passes } { $passes ->
        [one] pasada
       *[other] pasadas
    }
thick = MÁS GRUESA DE LO QUE DEBE
rock = Roca sobre la excavación
noRock = Ningún punto de roca.
rockIs = { $cy } yd³, ± { $doubt } por dónde termina
rockPoint = cara { $top } ft en E { $east } N { $north }
exceptions-gravel_short = FALTA GRAVA, { $tons } t: pida antes de que cierre la planta
exceptions-undercut_waits = La sobreexcavación de { $mark } lo espera
exceptions-retest_owed = { $mark }: la prueba NO PASÓ, pruebe otra vez
exceptions-retest_void = { $mark }: la prueba NO VALE, pruebe otra vez
