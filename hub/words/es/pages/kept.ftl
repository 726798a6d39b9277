### Spanish: what was said and not taken: a STOP, a reading that waits, a page without a hub, a key that can't be pressed yet. What each variable is stands in the English file.

stopWaits = SU PARE NO HA LLEGADO – GRITE – USE LAS MANOS
stopNobody = NADIE OYÓ SU PARE – GRITE – USE LAS MANOS
stopNobodyWhy = El servidor no conoce este teléfono. Escanee un código y apriete PARE otra vez.
stopSeen = YA ESTÁ QUIETA
onlyInMemory = Este teléfono no puede guardar nada. Deje abierta esta página: lo que no se envió se va con ella.
ask = SIN ENVIAR, hace { $age }: { $what }. ¿Todavía vale?
drop = TIRAR
dropped = SE TIRÓ. No se le dijo a ninguna cabina.
wentOut = Ya había salido antes de que se cortara el enlace. Se retira de la cabina.
left =
    { $n ->
        [one] 1 COSA DE ESTE TELÉFONO SIN ENVIAR
       *[other] { $n } COSAS DE ESTE TELÉFONO SIN ENVIAR
    }
leaving = { $mark }: sin resolver
leavingQuestion = La pregunta sobre esta lectura no tiene respuesta. Si la deja así, a la cabina no se le dice nada.
leavingWrong = Se dijo que un número estaba mal y no se ha escrito el bueno. La cabina no tiene número para esta marca.
stayHere = QUEDARSE EN ESTA MARCA
leaveIt = DEJARLO ASÍ
noHub = SIN ENLACE CON EL SERVIDOR
stayOut = QUÉDESE AFUERA – USE LAS MANOS
watchGround = MIRE AL DE PISO
lastKnown = Lo último que se supo, a las { $time }:
wasIn = { $who } ADENTRO EN { $machine }
youWereIn = USTED ESTABA ADENTRO EN { $machine } – BUSQUE CONTACTO VISUAL O SALGA
nobodyKnown = Nadie había dicho ADENTRO. Puede haber cambiado.
wasStopped = Había PARE para { $machine }
asking = Esta página le pregunta al servidor una y otra vez.

owed-something = Falta algo de arriba
owed-rod = Escriba la lectura del estadal
owed-number = Escriba el número
owed-side = Apriete ANTES o DESPUÉS
owed-mark = Escoja una marca
owed-setUp = No hay láser puesto: vea LÁSER
owed-place = Diga dónde está el estadal
owed-overLine = Apriete de qué lado de la línea
owed-line = Escoja la línea
owed-machine = Escoja la máquina
owed-stop = Apriete PARE entre las señas
owed-words = Escriba las palabras
owed-name = Escriba el nombre
owed-sizes = Escriba las tres en pies
owed-time = Escriba la hora
owed-material = Escriba qué lleva el camión
owed-yards = Yardas: sólo cifras, o nada
owed-wait = Se está enviando
owed-noReading = No se tomó nada que pueda estar mal
owed-gotIt = Ya se apretó ENTENDIDO
