### Spanish: the supervisor's pages. What each variable is stands in the English file.

yes = SÍ

shapes-fold = planos doblados
shapes-along = perfil a lo largo de una línea
shapes-trench = zanja
shapes-face = talud
shapes-surface = superficie
shapes-strip = bajo el terreno natural
shapes-contour = curva de nivel
pocketSheet = HOJA DE BOLSILLO
cabPapers = Para cada cabina y para la camioneta, por si solo quedan las manos:

sheetBooked-1 = Estadal
sheetBooked-2 = Hora
sheetBooked-3 = De
sheetAfterwards = Anote aquí lo que lea; después, MÁS · DEL PAPEL en LEER lo recibe.
noSheets = No hay láser puesto: ponga uno primero.
entry = registro
allowed = Se permite, ft
sheetUnproven = SIN COMPROBAR: lea un segundo banco de nivel antes de usarla.
sheetVoid = No vale si este láser se quita o se mueve, o si una rasante tiene nueva revisión.
sheetTenths = Un estadal que marca menos está en terreno alto: { $list } décimas que bajar. Uno que marca más está hondo, tantas décimas de más.
unprovenRuns = Sin comprobar
unprovenRun = { $name }: { $feet } de { $of } pies ({ $gaps })
questionsCame = { $asked } lecturas con pregunta: { $slips } errores, { $hits } como se sugirió
logTab = REGISTRO
codesTab = CÓDIGOS
targetsTab = RASANTES
siteTab = OBRA
add = AGREGAR
retire = QUITAR
newThing = nueva
mayBeLeftOut = opcional
east = Este
north = Norte
moreOfIt = UNO MÁS
lessOfIt = SACAR
lookAtIt = VERLO PRIMERO
showAll = VER LOS { $n }
retireNote = Lo que se dijo de ella sigue en el registro.
withItsMarks = VER: CON { $n ->
        [one] SU ÚNICA MARCA
       *[other] SUS { $n } MARCAS
    }
nothingDiffers = Nada difiere de lo que vale.
touchesMost = Una cota de excavación cambia hasta { $ft } ft.
importKey = IMPORTAR
importFile = Importar puntos
chooseFile = Una tabla de puntos (CSV) o LandXML 1.2
countsIn = Cuenta en, si no lo dice

planUnits-foot = PIES
planUnits-survey_foot = PIES TOPO.
planUnits-metre = METROS
coordinatesOf = Sus coordenadas son
ofSite = DE LA OBRA
ofPlan = DEL PLANO
understood = Entendido
notUnderstood = No entendido, o dejado aparte
lineNo = Línea { $n }:
becomes = Los puntos son
targetOfMarks = Rasante de estas marcas
onlyFirst = El archivo tiene { $all } puntos; de una vez se toman los primeros { $n }. Divida el archivo para el resto, o nómbrelo en el archivo de obra.
leftOut =
    { $n ->
        [one] Queda fuera { $n } punto
       *[other] Quedan fuera { $n } puntos
    }: sin nombre o sin cota.
exportSite = Exportar: tres archivos que van en una carpeta. Si la obra tiene reglas de excavación propias, ponga ese archivo junto a ellos como excavation-rules.toml.
siteChanged = El cambio ya vale y está en el registro.
exceptions = Necesita a alguien
noExceptions = Nada espera a nadie.
remove = QUITAR
removeAsk = ¿Quitar el teléfono de { $who }? Tendrá que escanear otra vez.
lift = LEVANTAR PARE
liftWhy = ¿Qué vio antes de levantarlo?
liftOne = SOLO { $machine }
liftAll = TODAS: { $machines }

slew-act = ACORDAR GIRO
slew-title = { $one } y { $other }
slew-why = Sus plumas pueden topar. Los dos operadores aprietan DE ACUERDO; ya no vale en cuanto una se mueve.
slew-keepsOut = { $machine } no entra ni gira al
slew-note = Una palabra al respecto
slew-propose = MOSTRARLO EN LAS DOS CABINAS
slew-canMeet = { $one } y { $other } pueden topar: a { $apart } pies, se necesitan { $needs }
slew-spotterNeeded = { $machine } puede acercarse demasiado a la línea aérea { $line }: necesita señalero
slew-onSlope = { $machine }: orugas { $inside } pies dentro de la pendiente de { $zone }, decide la persona competente

startDay-ready = EL DÍA ESTÁ LISTO
startDay-whyWithout = Estas no tienen valor. ¿Por qué se empieza sin ellas?
startDay-needs = Día no listo: { $said } de { $of } revisiones

nearMiss-title = Casi accidentes
nearMiss-name = NM-{ $n }
nearMiss-act = CASI ACCIDENTE
nearMiss-ask = ¿Qué pasó y qué se hizo?
nearMiss-add = AGREGAR
nearMiss-close = CERRAR EL CASO
nearMiss-knew = Lo que el servidor sabía entonces: lo último dicho, nada lo mide
nearMiss-said = Dicho
nearMiss-stood = en E { $east } N { $north } ({ $by }, { $at })
nearMiss-noPlace = nadie había dicho dónde
nearMiss-face = { $zone } a { $feet } pies
nearMiss-facesLeft = Taludes de los que ya había que alejarse: { $zones }
nearMiss-needsWords = NM-{ $n }: { $by } apretó PARE para todas. Diga qué pasó.
nearMiss-needsWordsWhy = NM-{ $n }: { $by } apretó PARE para todas: { $why }. Diga qué pasó.

rulings-leave = DEJARLO
rulings-patch = PARCHAR
rulings-trim = RASPAR
exception-stopped = { $machine } parada por { $by }
exception-stopped_why = { $machine } parada por { $by }: { $why }
exception-laser_in_doubt = { $setUp } en duda: lea dos bancos
exception-needs_ruling = { $mark } está { $dev }: dos lecturas muy justas
exception-cant = { $machine } no puede: { $why }
exception-cant_at = { $machine } no puede en { $mark }: { $why }
exception-screen_not_showing = { $machine }: nada se ve en la cabina. Manos.
exception-site_changed = Cambió el archivo de la obra
exception-target_not_seen = { $machine } no ha visto { $target } nuevo
exception-ties_first = { $machine } va a borrar { $marks }, puestas desde otra marca y sin amarres: amarre primero
exception-look_asked = { $machine } pide revisión
exception-target_typed_apart = { $target } se escribió dos veces y difiere: { $apart }
showDifference = VER
siteChange = Cambió el archivo de la obra. Nada de eso vale todavía.
confirmChange = QUE VALGA
oddInPlan = Raro en el plano nuevo
touches = Toca { $marks }.
touchesOut = Toca { $marks }. Aceptadas antes, fuera ahora: { $out }.

wasNow-what = Qué
wasNow-was = Era
wasNow-now = Es
wasNow-digTo = Cota a excavar, ft
undoes = DESHACE LO QUE { $who } CAMBIÓ AQUÍ, { $at } («{ $why }»): { $what }.
layersTake = las capas quitaban { $were } ft, quitan { $are } ft
moreChanges = también cambian su superficie, contorno, sobreexcavación o tolerancia
lastMarks = Últimas lecturas
aimSet = FIJAR
aimOn = En
aimNow = { $on } ahora: puntería { $aim } pies, rasante r{ $revision }
aimHint = Pies; negativo es más hondo
noAims = La puntería es la rasante en todas partes.
revise = REVISAR RASANTE
badNumber = Escriba un número de pies, como 302.00.
newCodes = CÓDIGOS NUEVOS
codesLast = Cuánto valen los códigos

lasts-today = HOY
lasts-this_week = ESTA SEMANA
lasts-until_renewed = HASTA HACER NUEVOS
lastsNote = Quien tiene un código entra mientras valga. Haga nuevos cuando se pierda uno o se vaya una cuadrilla.

phones-open = TELÉFONO
phones-of = Teléfono de { $who }
phones-asksWho = nadie ha dicho quién lo tiene
phones-confirmed = confirmado por { $by }
phones-notConfirmed = SIN CONFIRMAR: no cuenta como persona competente
phones-stays = sigue registrado de noche
phones-confirmAsk = Mire en manos de quién está. Entonces el teléfono cuenta hoy como de { $who }: como testigo, y como persona competente si el archivo de obra nombra a { $who }.
phones-confirm = ES { $who }
phones-letStay = DEJARLO REGISTRADO DE NOCHE
phones-noStay = YA NO DE NOCHE
phones-giveAsk = Otro teléfono puede tomar la cabina de { $machine } en los próximos 10 minutos.
phones-give = ENTREGAR LA CABINA DE { $machine }
newCodesAsk = ¿Anular todos los códigos e imprimir otros? Los teléfonos ya registrados siguen registrados.
print = IMPRIMIR
codesAddress = Los teléfonos llegan al servidor en
addressChanged = La dirección no es la de ayer. Imprima los códigos otra vez.
wifi = Wi-Fi
choose = USAR ESTA
exportDay = Archivo del día
exportTable = Tabla

restore-key = PROBAR LA COPIA
restore-tries = Exportando, recibiendo de nuevo, comparando…
restore-back = Todo volvió, cada hoja igual. Asientos { $entries }, fotos { $photos }, días { $days }, hojas { $sheets }.

verdicts-high = ALTO
verdicts-on = A NIVEL
verdicts-low = HONDO
verdicts-too_close_high = muy justo, lado ALTO
verdicts-too_close_low = muy justo, lado HONDO

cuts-tab = TALUDES
cuts-noFaces = El archivo de obra no nombra talud ni zanja.
cuts-rulesBy = Reglas: { $name }
cuts-engineerTitle = Las alturas de libro y los pronósticos son solo para el ingeniero: no es permiso.
cuts-critical = Alturas críticas de libro de una cara vertical: c { $c } psf (mitad de la resistencia), { $weight } pcf, un suelo, seco, sin carga. El agua en una grieta las baja todas.
cuts-noTension = no se cuenta con la tensión; una grieta seca puede llegar hasta su fondo
cuts-halfCracked = agrietada de la corona a media altura (Terzaghi)
cuts-uncracked = entera hasta la corona y resistiendo tensión: la más optimista
cuts-noCritical = Sin altura crítica: no se midió la resistencia.
cuts-forecast = Uno entre la velocidad de la grieta llega a nada a las { $at }: dos datos, sin promesa
cuts-design = DISEÑO DEL INGENIERO
cuts-designTitle = Diseño propio del ingeniero de { $name }
cuts-designBelow = Ancho a 1 desde el pie
cuts-designTop = Hasta la cota, ft; vacío hasta el terreno
cuts-designAbove = Ancho a 1 arriba de eso
cuts-designWhy = ¿De quién es el diseño, dónde está escrito?
cuts-allowAt = ¿Para cuál marca? El permiso es solo para ese lugar.
cuts-notLocated = SIN BOLETO: { $n } { $n ->
        [one] marca
       *[other] marcas
    }
cuts-allow = DEJAR SEGUIR
cuts-allowAsk = ¿Por qué sigue, por palabra de quién?
cuts-ticket = Boleto de localización
cuts-checkTicket = REVISAR BOLETO
cuts-answers-marked = MARCADO
cuts-answers-none_here = NADA AQUÍ
cuts-answers-silent = SIN RESPUESTA
cuts-exception-face_left = Hubo que alejarse de { $zone }: { $why }
cuts-exception-inspection_due = { $zone }: falta inspección, { $why }
cuts-exception-inspection_overdue = { $zone }: se trabaja debajo sin inspección, { $why }
cuts-exception-daylight_over = { $zone } saldría { $feet } ft sobre { $line }
cuts-exception-daylight_touch = { $zone } saldría en { $line }
cuts-exception-crossing = { $zone } cruza { $line } con { $clear } ft, pide { $need }
cuts-exception-pile_at_crest = { $pile } está a { $back } pies detrás de la corona de { $zone }: llévelo hacia atrás hasta { $need } pies
cuts-exception-paint_gone = Se borró la marca de { $line }: pida otra

wayIn-inside = En una zona prohibida
wayIn-nobodyIn = Nadie ha dicho que está adentro. Mire de todos modos.
wayIn-sawOut = LO VI AFUERA
wayIn-sawOutTitle = { $who } afuera en { $machine }
wayIn-sawOutAsk = ¿Qué vio? Queda en el registro.
wayIn-tellThem = Dígale a { $who }: está afuera, y pide otra vez antes de entrar.
wayIn-needsUnconfirmed = ENTRADA SIN CONFIRMAR: { $who } en { $machine }. Haga salir a { $who }.
wayIn-needsLink = { $who } está ADENTRO en { $machine }, sin enlace. Mire.
wayIn-needsAnswer = { $who } pide en { $machine }: sin respuesta.
