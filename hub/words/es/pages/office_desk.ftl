### Spanish: the supervisor's desk: its plan, what its signs mean, and the card of what was pressed. What each variable is stands in the English file.

signs-unread = sin leer
signs-spot = sin rasante
signs-on = a rasante
signs-high = alta
signs-low = baja
signs-too_close = muy justa
signs-again = leer otra vez
legend = Signos
noRoom =
    { $n ->
        [one] 1 nombre no cabe
       *[other] { $n } nombres no caben
    }: acérquese.
outOfSight =
    { $n ->
        [one] 1 marca queda fuera de la vista.
       *[other] { $n } marcas quedan fuera de la vista.
    }
countOf =
    { $n ->
        [one] 1 marca más: { $ids }
       *[other] { $n } marcas más: { $ids }
    }. Acérquese.
bar = { $feet } pies
planKeys = Rueda o + y −: más cerca, más lejos. Arrastrar o flechas: a lo largo. Apriete una cosa: su ficha.
readings = Lecturas
calls = Llamadas
photos = Fotos
history = Historia
marksOf = Marcas
stack = Rasante
station = estación { $station } pies
rightOf = { $feet } pies a la derecha
leftOf = { $feet } pies a la izquierda
place = E { $east } N { $north } pies
layer = { $name } { $feet } pies
allowed = se admite +{ $high } / −{ $low } pies
aim = puntería { $feet } pies
nearStep = junto al escalón en { $station }: { $before } antes, { $after } después
noTarget = sin rasante
noGrade = aquí no hay rasante
stoodBy = donde { $by } dijo a las { $at }; nada la mide
nobodySaid = Nadie ha dicho dónde está.
keepOut = zona prohibida { $feet } pies
reach = alcance { $reach } pies, cola { $tail } pies
lineKinds-property = lindero
lineKinds-easement = servidumbre
lineKinds-setback = retiro
lineKinds-limit_of_work = límite de obra
noCross = nadie excava más allá
keepSide-left = el trabajo queda a la izquierda, mirando a lo largo
keepSide-right = el trabajo queda a la derecha, mirando a lo largo
doubt = su lugar se conoce a ± { $feet } pies
lowest = lo más bajo, { $feet } pies sobre el suelo
voltage = { $kv } kV
voltageAtMost = { $kv } kV como mucho
voltageUnknown = voltaje desconocido
bottom = fondo a { $feet } pies
across = { $feet } pies de ancho
elevation = cota { $feet } pies
kinds-mark = marca
kinds-machine = máquina
kinds-line = línea
kinds-buried = línea enterrada
kinds-overhead = línea aérea
kinds-face = talud o zanja
kinds-ticket = boleto de localización
kinds-pile = montón
kinds-structure = zapata o muro
kinds-benchmark = banco de nivel
kinds-target = rasante
phones = TELÉFONOS { $n }
start = REVISIONES
lastReadings = ÚLTIMAS LECTURAS
proven = SIN COMPROBAR
noStop = Ningún PARE sigue puesto.

drawPlace = PONERLA EN EL PLANO
drawLine = TRAZARLA EN EL PLANO
undo = DESHACER
pressThere = Apriete donde está. Un punto se arrastra, o se mueve con las flechas.
pickOne = Apriete una cosa en la lista o en el plano, o agregue una. Nada vale antes de que lo haya visto y dicho por qué.
handle = { $id }, lugar { $n }: arrástrelo, o muévalo con las flechas
surfaceOf = El archivo tiene una superficie de { $n } triángulos.
makeTarget = HACER DE ELLA UNA RASANTE
leftOutRow = QUEDA FUERA
fileSays = Archivo, pies
targetSays = Cavar ahí a, pies
apart = Diferencia, pies
elevationOf = Cota
