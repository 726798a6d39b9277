### Spanish: coming in, and who holds a phone. What each variable is stands in the English file.

joinTitle = Entrar
joinWho = Nombre o iniciales
joinRole = Lo que hace aquí
joinIn = ENTRAR
joinNeedName = Primero escriba su nombre o iniciales.
joinNeedRole = Primero apriete lo que hace aquí.
joinNeedCode = Escanee un código de la camioneta para entrar, o escriba la dirección que está debajo.
joinVoid = Este código ya no vale. Pida al supervisor el código de hoy.
joinCab = Este teléfono será la pantalla de { $machine }.
sameName = { $who } ya está aquí, en otro teléfono desde las { $time }. ¿Quién es usted?
sameNameIn = { $who } puede estar ADENTRO en { $machine }. Por { $who } dice que ya salió solo { $who }, o alguien que haya mirado.
samePerson = SOY { $who }, EN OTRO TELÉFONO
otherPerson = Soy otra persona. Mi nombre aquí:
otherIn = ENTRAR COMO OTRA PERSONA
stillYou = ¿{ $who }?
stillYouWhy = Este teléfono siguió registrado de noche. Diga quién lo tiene; PARE funciona de una vez.
yesIAm = SÍ, SOY { $who }
somebodyElse = OTRA PERSONA
giveCab = ENTREGAR LA CABINA DE { $machine } A OTRO TELÉFONO
giveCabNote = Después escanee el código de la cabina con el otro teléfono en los próximos 10 minutos. No mientras se mantiene CUCHARÓN ABAJO ni si alguien pide entrar o está adentro.
getOut = Antes de que alguien baje de la cabina. Desde ahí se pide entrar en otra máquina.
joinStay = Si el teléfono dice que este Wi-Fi no tiene internet: siga conectado. No hace falta.
