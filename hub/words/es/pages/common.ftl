### Spanish: what every page has: STOP, links, roles, good-byes. What each variable is stands in the English file.

title = Rodcall
stop = PARE
stopAll = PARE: todas las máquinas
back = ATRÁS
cancel = CANCELAR
close = CERRAR
skip = SALTAR
none = ninguno
hold = mantenga
heldShort = QUITÓ EL DEDO ANTES: MANTENGA HASTA QUE SE LLENE
loading = Preguntando al servidor…
noHub = El servidor no contesta. Siga en el Wi-Fi de la cuadrilla y pruebe otra vez.
linkLost = SIN ENLACE
linkLostDo = Sin enlace. Use las manos. Esta página prueba otra vez sola.
linkUp = Enlace vivo
haltedTitle = SIN NÚMEROS – USE LAS MANOS
notInTheLog = Este PARE no está en el registro: el servidor no puede escribir. Apunte quién y cuándo.
offSiteDo = El archivo de obra ya no tiene esta máquina. Pregunte al supervisor. PARE sigue parando a todos.
halted = El servidor no puede guardar el registro y no toma órdenes. Use las manos, vea la laptop.
photo = FOTO
nobodyInIt = no hace falta que salga nadie
photosWait =
    { $n ->
        [one] 1 foto espera en este teléfono.
       *[other] { $n } fotos esperan en este teléfono.
    }
notSentCount = { $n } SIN ENVIAR – USE LAS MANOS
dropped = { $n } sin enviar con el nombre de antes. { $n ->
        [one] Tómela otra vez.
       *[other] Tómelas otra vez.
    }
ago = hace { $time }
caution = Es un recordatorio, no un guardia: no detecta a nadie. Lo que vale es el contacto visual.
lookAlways = Que no haya nadie en la lista no quiere decir que no haya nadie: MIRE.

struck-key = GOLPEADA
struck-title = LÍNEA GOLPEADA:
struck-notDrawn = no dibujada
struck-asks-get_away = GAS. TODOS LEJOS YA, CONTRA EL VIENTO. Salgan y aléjense de la máquina; sin llama, sin interruptores, sin teléfono cerca. De lejos llamen al 911, luego al dueño. Nadie vuelve antes de que los bomberos lo digan.
struck-asks-live = CORRIENTE. NO TOQUEN NADA, NO SE ACERQUEN: máquina y suelo pueden tener corriente. En la cabina quédese adentro, salvo incendio. Llamen al 911, luego al dueño.
struck-asks-touch_nothing = NO TOQUEN NADA, TODOS FUERA DEL HOYO. Llamen al dueño; si hay heridos, al 911.
struck-asks-not_known = TUBO O CABLE, NO SE SABE DE QUÉ. NO TOQUEN NADA. Si se golpeó, silba o huele: todos lejos contra el viento, 911, luego el dueño.
cautionShort = Recordatorio, no guardia: no detecta a nadie.

roles-ground = PISO
roles-operator = OPERADOR
roles-supervisor = SUPERVISOR
roles-visitor = VISITA
roles-hub = SERVIDOR

bye-removed = Este teléfono fue quitado. Escanee un código para volver a entrar.
bye-retired = Otro teléfono es ahora la pantalla de esta máquina. Este no muestra órdenes.
bye-ask_who = Empezó otro día.
bye-day_over = Terminó el día. Escanee un código nuevo mañana.
bye-closing = El servidor se está cerrando.
