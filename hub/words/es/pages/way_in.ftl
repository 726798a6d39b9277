### Spanish: the way into a keep-out: what to do, then why. What each variable is stands in the English file.

ask = PEDIR A { $machine } ENTRAR EN SU ZONA
outside = NO ENTRO – LEO DESDE AFUERA
within = { $mark } queda dentro de la zona prohibida de { $machine }.
placeOld = Nadie ha dicho hace poco dónde está { $machine }: cuéntese adentro.
tail = Detrás de la caseta y junto a las orugas quédese afuera, también con el cucharón abajo. El lado ciego gira con la caseta.
asked = PEDIDO A { $machine } · { $time }
stayOut = QUÉDESE AFUERA
notAnswered = SIN RESPUESTA – AFUERA – BUSQUE CONTACTO VISUAL
noScreen = NADA SE VE EN { $machine } – AFUERA – BUSQUE CONTACTO VISUAL
waitSaid = LA CABINA DICE QUE ESPERE – AFUERA
noSaid = LA CABINA DICE QUE NO – AFUERA
comeIn = CUCHARÓN ABAJO. BUSQUE CONTACTO VISUAL. APRIETE ENTRO AL ENTRAR.
inKey = ENTRO
notGoing = NO VOY A ENTRAR
askAgain = PEDIR OTRA VEZ
seenNo = ME QUEDO AFUERA
youAreIn = ESTÁ ADENTRO EN { $machine } · { $time }
outKey = YA SALÍ
withMe =
    { $others ->
        [0] VOY SIN NADIE MÁS
       *[other] CONMIGO: { $others }
    }
oneMore = viene uno más
oneLess = viene uno menos
allOut = YA SALIMOS LOS { $all }
allSeen = Son { $all }. Apriételo solo cuando haya visto salir a los { $all }.
toldOut = { $who } DICE QUE USTED YA SALIÓ DE { $machine }. ¿ES CIERTO?
toldOutInYourName = OTRO TELÉFONO CON SU NOMBRE DICE QUE USTED YA SALIÓ DE { $machine }. ¿ES CIERTO?
stillIn = SIGO ADENTRO
edgeFirst = { $mark } queda dentro de una zona prohibida: pida entrar antes de medir ahí.
unconfirmed = LA CABINA NO ACEPTÓ – SALGA – BUSQUE CONTACTO VISUAL
screenLost = { $machine } SIN PANTALLA – BUSQUE CONTACTO VISUAL O SALGA
askNotSent = SIN ENVIAR – QUÉDESE AFUERA – USE LAS MANOS
inNotSent = ENTRADA SIN ENVIAR – LA CABINA NO LO SABE – SALGA O BUSQUE CONTACTO VISUAL
outNotSent = SALIDA SIN ENVIAR – EN LA PANTALLA DE LA CABINA USTED SIGUE ADENTRO
sending = ENVIANDO – QUÉDESE AFUERA
asks = { $who } PIDE ENTRAR
asksAt = { $who } PIDE ENTRAR EN { $mark }
told = A { $who } SE LE DIJO QUE ENTRE
isIn = { $who } ESTÁ ADENTRO
isInUnasked = { $who } ESTÁ ADENTRO – USTED NO ACEPTÓ
lostLink = SIN ENLACE
bucketDown = CUCHARÓN ABAJO · PALANCA TRABADA
holdsDown = CUCHARÓN ABAJO
wait = ESPERE
no = NO
release = REANUDAR
notReleased = NO SE REANUDA: { $who } ADENTRO. Mire y espere su YA SALÍ.
empty = NADIE DICE ESTAR ADENTRO – MIRE ANTES DE MANTENER REANUDAR
nobody = NADIE HA PEDIDO ENTRAR – MIRE DE TODOS MODOS
wasIn = { $who } ADENTRO. QUIETO.
shownAfter = SE VE EN LA CABINA DESPUÉS DE REANUDAR

stages-asked = pide
stages-waiting = espera
stages-refused = se le dijo que no
stages-answered = se le dijo que entre
stages-in = ADENTRO
stages-unconfirmed = ADENTRO, SIN ACUERDO
