### Spanish: laser set-ups, their proof and their checks. What each variable is stands in the English file.

setUpNew = PONER UN LÁSER
whichLaser = ¿Cuál láser?
whichBenchmark = ¿Cuál banco está bajo el estadal?
whichRod = ¿Cuál estadal?
slopeAs = Las mismas cifras que en el láser. Lo comprueban tres bancos que no queden en línea con el láser.
slopedLaser = INCLINADO
slopedNote = Se comprueba con tres bancos
riseEast = Sube al este, % (baja: −)
riseNorth = Sube al norte, % (baja: −)
goOn = SEGUIR
slopedPlace = La altura de un láser inclinado depende de dónde está.
sloped = inclinado { $east } al este, { $north } al norte
whereStands = ¿Dónde está el láser?
rodOnBenchmark = Estadal en { $benchmark }
secondOwed = Ahora lea un segundo banco. Antes no hay órdenes.
checkShot = REVISAR
secondBenchmark = SEGUNDO BANCO
bumped = LO GOLPEARON
takeDown = QUITARLO
restateSetUp = CORREGIR LECTURA
levelAgain = NIVELAR OTRA VEZ

levelSteps-1 = Estadal en un punto firme: léalo ahora.
levelSteps-2 = Cambie la altura del láser una décima o más. Estadal en el banco.
levelSteps-3 = Estadal otra vez en el mismo punto.
useOne = USAR UN SOLO BANCO
useOneWhy = Cada orden dirá UN SOLO BANCO.
hi = AI

proofs-unproven = Falta el segundo banco
proofs-unproven_slope = Inclinado: faltan dos bancos más que no queden en línea con el láser
proofs-unproven_slope_so_far = Inclinado: faltan dos bancos más que no queden en línea con el láser. Hasta ahora: { $agreed }
proofs-across_the_slope = Probado a lo ancho de la pendiente con dos bancos
proofs-second_benchmark = Probado con un segundo banco
proofs-two_benchmarks = Probado otra vez con dos bancos
proofs-levelled_again = Nivelado dos veces en un banco
proofs-one_benchmark = UN SOLO BANCO
doubtCheck = La revisión en { $benchmark } difirió { $by }
doubtBenchmark = { $mark } se corrigió { $by }: corrija la puesta
doubtBumped = { $by } vio que se movió
doubtDo = Sin órdenes hasta que coincidan dos bancos.
agreed = Coinciden desde entonces: { $list }
sinceCheck = { $n } { $n ->
        [one] lectura
       *[other] lecturas
    } desde la última revisión

due-bumped = REVISE EL LÁSER: lo golpearon
due-drift = REVISE EL LÁSER: las repeticiones no concuerdan
due-overdue = REVISE EL LÁSER: las órdenes ya dicen que no se revisó
due-time = Toca revisar: pasó el plazo
due-readings = Toca revisar: 25 lecturas
due-temperature = Toca revisar: cambió la temperatura
due-restart = Toca revisar: se reanuda el trabajo
suspectHead = { $setUp } { $from }–{ $to }: difiere { $by }, { $n } { $n ->
        [one] lectura
       *[other] lecturas
    } en duda
suspectOpen = { $setUp } desde { $from }: { $n } { $n ->
        [one] lectura
       *[other] lecturas
    } SIN COMPROBAR, no se leyó ningún banco
reshoot = LEER OTRA VEZ
standEither = Quedan de las dos maneras

standings-stands = queda
standings-earlier_stands = queda lo aceptado antes
standings-shoot_again = puede estar mal
standings-unproven = sin comprobar
ifMoved = { $booked }, o { $moved } si el láser ya se había movido
checked-good = Bien. Difiere { $by }.
checked-again = Difiere { $by }. Lea otra vez.
checked-failed = Difiere { $by }. El láser está en duda.
usable = La puesta ya da lecturas.
proven = { $id } está probada. Ya da lecturas.
slipsAsk = ¿Fue algo de esto? Nada se cambia solo.
slips-other_benchmark = Eso es { $used } menos { $perhaps }. ¿En cuál está el estadal?
slips-whole_foot = Un pie entero: lea otra vez la marca del pie.
slips-tenth = Una décima: lea otra vez la décima.
slips-digits_swapped = ¿{ $typed } en vez de { $perhaps }?
slips-bracket = El soporte: ¿está puesto, está contado?
slips-rod_section = Una sección: ¿está la de abajo toda afuera?
slips-laser_moved = ¿Se movió el láser? Lea { $benchmark } otra vez: { $reads } lo dice.
slips-inches_as_tenths = { $typed }: ¿pulgadas escritas como décimas? ¿{ $perhaps }?
