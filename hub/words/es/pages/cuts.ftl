### Spanish: faces and what is buried. What each variable is stands in the English file.

face = TALUD
pipes = ENTERRADO
faces = Taludes y zanjas
caution = Un recordatorio: dice qué regla o número no se cumple. Primero van el juicio de la persona competente, el ingeniero y el código.
oneCallFirst = La localización va antes que lo dibujado aquí; una línea es peligrosa a toda profundidad hasta destaparla a mano.

also-falling_loads = Nadie bajo un cucharón o una carga, ni junto a un camión que se carga.
also-mobile_equipment = Donde la cabina no ve el borde: barreras, señales o topes.
also-atmosphere = ¿Puede haber aire malo? Se mide antes de que alguien entre.
also-water = Nadie trabaja donde hay o entra agua antes de tomar precauciones.
also-edge = Un borde que no se ve bien lleva baranda o barrera.
competent = Persona competente: { $who }
classIs = CLASE { $name }
notClassed = SIN CLASE: cuenta como C

classes-rock = ROCA
classes-a = A
classes-b = B
classes-c = C
loweredFrom = se escogió { $picked }, la baja { $why }

lowered-material = el suelo mismo
lowered-strength = su resistencia
lowered-thumb = el pulgar
lowered-cracks = las grietas
lowered-vibration = la vibración
lowered-disturbed = haberse excavado antes
lowered-water = el agua
lowered-dip = las capas que caen al corte
height = { $feet } ft de alto cuando más
slope = { $runs } a 1
upTo = { $run } a 1 hasta { $top } ft
above = { $run } a 1 arriba
designed = diseño propio del ingeniero
signed = Lo inspeccionó { $who } a las { $at }
due = FALTA INSPECCIÓN: { $why }
overdue = INSPECCIÓN VENCIDA: { $why }; se trabaja debajo desde { $at }

dueWhy-new_day = hoy ninguna
dueWhy-seen = se vio algo
dueWhy-left = hubo que alejarse del talud
dueWhy-rain = lluvia
dueWhy-water = se bombeó agua
leave = ALÉJENSE DEL TALUD
leaveStrip = { $name }: nadie a menos de { $feet } ft del pie del talud
leaveWhy-pins = Los clavos { $pins } se abren muy rápido
leaveWhy-slough = Se cayó
leaveWhy-said = Dicen que se mueve
leaveDo = Retroceda fuera de su alcance. Luego apriete.
away = YA ME ALEJÉ
mustLeave = Aún no se alejan: { $machines }
pinsNow = { $pins } { $apart } ft, { $rate } ft por hora
pinsNone = { $pins } sin medir

pinStates-still = QUIETO
pinStates-watch = VIGILAR
pinStates-leave = ALÉJENSE
crest = En { $mark }: { $run } a 1, { $degrees }°
crestBack = corona atrás { $back } ft; cuelgan { $yards } yd³ por pie
benches = o bancos desde abajo: { $rises } ft de alto, huellas de { $treads } ft o más
ladders = { $n } { $n ->
        [one] escalera
       *[other] escaleras
    }, para que nadie camine más de { $travel } ft
crestFlat = tan tendido como pide su clase
daylight = LÍNEA DE CEROS
lineOver = sobre { $line } por { $feet } ft
lineIn = { $line }: { $feet } ft adentro
overAt = pie del talud, estación { $from } a { $to }
highEngineer = Más alto que las tablas: lo diseña un ingeniero
missing = { $n } { $n ->
        [one] lugar
       *[other] lugares
    } sin línea de ceros o sin terreno conocido
structure = { $name }: { $feet } ft de espacio
influence = pie del talud { $feet } ft bajo su línea de 1 a 1: pregunte al ingeniero

seenAt-water = AGUA
seenAt-crack = GRIETA
seenAt-rain = LLUVIA
seenAt-vibration = VIBRA
seenAt-load = CARGA ARRIBA
seenAt-trimmed = PERFILADO
cameDown = SE CAYÓ
seenLine = { $what } · { $who } · { $at }
loadBack = Desde la corona, ft

slough-told = Cada cabina y teléfono dice ALÉJENSE DEL TALUD. Cuando nadie esté abajo: ¿cuánto se cayó?
slough-length = A lo largo, ft
slough-height = Alto, ft
slough-back = Hacia atrás, ft
slough-mark = Marca más cercana
pins = CLAVOS
pinsTape = Cinta, ft
inspect = INSPECCIONAR
inspectTitle = Inspección de { $name }
pickClass = Clase de suelo que escoge
seen = Lo que ve: seco o mojado, grietas, bultos, cargas
byHand = Lo que halla la mano: pulgar, rollito, penetrómetro
strength = Penetrómetro de bolsillo, tsf
thumb = Pulgar

thumbs-great_effort = MARCA, CUESTA METERLO
thumbs-some_effort = ENTRA CON ESFUERZO
thumbs-easily = ENTRA FÁCIL
material = Suelo

materials-stable_rock = ROCA FIRME
materials-loose_rock = ROCA SUELTA
materials-cemented = CEMENTADO
materials-cohesive = ARCILLA
materials-silt_or_angular = LIMO, FRANCO ARENOSO
materials-granular = ARENA, GRAVA
found = Se halló

finds-cracks = GRIETAS
finds-vibration = VIBRA
finds-disturbed = YA EXCAVADO
finds-water = AGUA
release = Por qué vuelve la gente debajo
sign = FIRMAR
signRetype = CAMBIAR CLASE DE SUELO
why = ¿Por qué? Queda en el registro.
onlyLowers = No clasifica ningún suelo: escoge la persona competente, lo hallado solo baja la clase.
retypeTitle = Suelo de { $name }

## What is buried
utilities = Líneas enterradas

kinds-gas = GAS
kinds-electric = ELECTRICIDAD
kinds-communication = TELÉFONO, CABLE
kinds-water = AGUA
kinds-reclaimed = AGUA TRATADA
kinds-sewer = DRENAJE
kinds-unknown = NO SE SABE
depthUnknown = NO SE SABE LA HONDURA: destápela a mano, toda hondura es peligro
bared = arriba { $top }, abajo { $bottom } ft · { $who }
crossing = { $zone }: a mano de la estación { $from } a { $to }
clear = a { $clear } ft, pide { $need } ft
tooNear = MUY CERCA: pregunte al ingeniero
paintGone = SE BORRÓ
paintAgain = PINTADA OTRA VEZ
bare = DESTAPADA
bareTitle = { $name } destapada a mano
topFeet = Cota de arriba, ft
sizeInches = Diámetro exterior, in
callOwner = Llame: { $who }
handDig = CAVE A MANO
handDigAt = { $kind }: estación { $from } a { $to }
ticketHolds = { $id } vale hasta { $to }, { $days } { $days ->
        [one] día
       *[other] días
    } más
ticketLapsed = { $id } NO VALE HOY (hasta { $to }): pida otro
ticketChecked = lo vio { $who }, { $at }
ticketNotChecked = HOY NADIE LO HA VISTO
ticketSilent = sin respuesta: { $kinds }

## On calls
held = SIN ORDEN. { $why }

depthRules-egress = ESCALERA
depthRules-protection = PROTECCIÓN
depthRules-engineer = INGENIERO
depthStates-ahead = se debe a { $limit } ft, faltan { $left } ft al bajar
depthStates-next_tenth = la próxima décima: faltan { $left } ft para { $limit } ft
depthStates-owed = SE DEBE: pasó { $limit } ft
rains = LLUEVE, avisado a las { $at }
pumpedOut = AGUA BOMBEADA
rainStopped = PARÓ LA LLUVIA
toldSince = Desde que se abrió esta hoja se avisó algo de este talud, de lluvia o de agua. Mire otra vez.
lookedAgain = MIRÉ OTRA VEZ
