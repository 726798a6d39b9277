### Spanish: the review. What each variable is stands in the English file.

tab = REVISAR
day = Día
part = Parte

parts-day = EL DÍA
parts-replay = REPETIR
parts-pictures = DIBUJOS
parts-tables = HISTORIAS
parts-told = QUIÉN MANDÓ
parts-paper = PAPEL

tableNames-as_built_csv = como quedó
tableNames-readings_csv = lecturas
tableNames-calls_csv = órdenes
tableNames-checks_csv = revisiones del láser
tableNames-hours_csv = horas
tableNames-costs_csv = costos
tableNames-loads_csv = viajes
tableNames-patches_csv = parches
tableNames-tests_csv = pruebas de suelo
tableNames-rock_csv = roca
tableNames-edges_csv = bordes
tableNames-exceptions_csv = fuera de lo común
tableNames-open_csv = pendientes
tableNames-photos_csv = fotos
tableNames-as_built_xml = puntos como quedaron, LandXML
tableNames-marks_geojson = marcas, GeoJSON
none = Ninguno.
exceptions = Fuera de lo común

kinds-near_miss = CASI ACCIDENTE
kinds-stop = PARO
kinds-face = TALUD
kinds-rain = LLUVIA, AGUA
kinds-laser = LÁSER
kinds-asked = PREGUNTA
kinds-late = TARDE
kinds-override = DECIDIDO
kinds-call_lost = ORDEN PERDIDA
kinds-screen = PANTALLA
kinds-test = PRUEBA DE SUELO
kinds-void = NO VALE
kinds-gravel = GRAVA
kinds-buried = ENTERRADO
kinds-log_cut = REGISTRO CORTADO
kinds-paper = DEL PAPEL
open = Pendiente
nothingOpen = Nada que el registro conozca.
lanes = El día en carriles
lanesHere = Apriete un momento para repetir desde ahí.

laneOf-machine = máquina
laneOf-screen = pantalla
laneOf-laser = láser
laneOf-person = persona

spans-showing = se ve
spans-hidden = oculta
spans-lost = sin enlace
spans-unproven = sin probar
spans-proven = probado
spans-check_due = toca comprobar
spans-in_doubt = en duda
spans-on_site = en la obra
asksIn = pide entrar, { $machine }
isIn = dentro en { $machine }{ $unconfirmed ->
        [true] , SIN CONFIRMAR
       *[false] { "" }
    }{ $lost ->
        [true] , sin enlace
       *[false] { "" }
    }
record = Asentado
changes = Qué cambió en la obra, y por qué
slider = Hora de la repetición
before = ◂ ANTES
next = SIGUE ▸
play = CORRER
pause = PAUSA
speed = Velocidad

screens-none = sin pantalla
screens-showing = se veía
screens-hidden = ESTABA OCULTA
screens-lost = SIN ENLACE
groundScreen = Suelo
screenOf = Pantalla repetida, { $kind }
replayNote = Hecho solo del registro. Muestra lo que tenía la página, no que alguien la miró.
planDifferences = Plano con diferencias finales, ft
runs = Zanjas: lo permitido, lo que quedó, con qué duda
runNote = Estaciones y elevaciones en pies.
notProven = { $feet } ft sin probar
notProvenAt = { $feet } ft sin probar ({ $where })
differences = Diferencias finales
differencesNote = Marcas por su última diferencia en medias décimas de pie; HONDO a la izquierda, ALTO a la derecha.
depth = Fondo con el tiempo
depthNote = Diferencia con el nivel en pies, ALTO arriba.
delays = De la orden al entendido
delaysNote = Más de 30 s está en el borde de arriba, con sus segundos.
historyOf = Historias

histories-calls = ÓRDENES
histories-marks = MARCAS
histories-setUps = PUESTAS
only = Solo con

callColumns-1 = Enviada
callColumns-2 = Quién
callColumns-3 = Máquina
callColumns-4 = Marca
callColumns-5 = En la pantalla
callColumns-6 = Teléfono, s
callColumns-7 = Mostrada, s
callColumns-8 = ENTENDIDO, s
callColumns-9 = Terminó
readingsOn = { $n } { $n ->
        [one] lectura
       *[other] lecturas
    }
atMark = Cerca de la marca
atPlace = un lugar
fromDay = Desde el día
toDay = Hasta el día
noDayThen = El registro no tiene ningún día en este tiempo.
amendedLater = Enmendado en días posteriores
from = Desde, como 10:05
to = Hasta
ask = ¿QUIÉN LE MANDÓ EXCAVAR?
gaps = Lo que el registro no dice
noGaps = No se halló hueco.
marksThere = Al alcance: { $list }.
noMarksThere = Ninguna marca al alcance.
wholeSheet = LA HOJA ENTERA, CON SU PRUEBA
sheets = Hojas

sheetNames-day = INFORME DEL DÍA
sheetNames-as_built = CÓMO QUEDÓ
sheetNames-hand_over = ENTREGA
sheetNames-cab_card = TARJETA DE CABINA
sheetNames-hand_signals = SEÑAS
sheetsNote = Cada una abre sin el servidor, se imprime en blanco y negro y lleva la cabeza de la cadena.
tables = Tablas

legend-free = excava, se ve, probado, en la obra
legend-hatch = espera, sin probar, en una zona prohibida
legend-dots = oculta, toca comprobar, pide entrar
legend-ink = parada, sin enlace, en duda
legend-noted = fuera de lo común
legend-target = hasta dónde excavar
legend-allowed = permitido
legend-sure = última lectura, y su duda
legend-taken = tomada
legend-notTaken = no tomada
legend-expected = cuándo se esperaba el fondo a nivel
legend-painted = hasta mostrarse
legend-gotIt = hasta ENTENDIDO
legend-neverPainted = nunca mostrada
legend-onTarget = en la rasante
legend-howMany = cuántas marcas
legend-soil = suelo
legend-rock = roca
legend-least = el menor costo

momentsOf = Momentos
momentsNoted = lo fuera de lo común
momentsAll = todo lo dicho
momentsMark = marca { $mark }
momentsWith = Palabras
noMoment = Ningún momento cabe.
moments = { $many } { $many ->
        [one] momento
       *[other] momentos
    }
finalOf = Diferencia final, ft
lastAt = Última lectura
choose = escoja
owed-machine = Escoja la máquina por la que se pregunta.
owed-place = Escoja una marca, o escriba este y norte del lugar en pies.
owed-from = Desde: un día, y una hora como 10:05.
owed-to = Hasta: un día, y una hora como 15:40.
owed-order = El fin está antes del comienzo.
asked = { $machine }, { $place }, { $from } a { $to }
nearMark = cerca de { $mark }
nearPlace = cerca de E { $east } N { $north } ft

lanesAll = LOS { $many } CARRILES
lanesFew = MENOS CARRILES
