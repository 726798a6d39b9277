### Why something can't be done, and what to do instead.

no_day = No hay día abierto. Arranque el servidor otra vez o pida al supervisor que abra uno.
no_site = No hay obra cargada. Arranque el servidor con un archivo de obra.
not_allowed = Este teléfono no puede hacer eso. Pídalo { $roles }.
set_up_not_proven = { $set_up } todavía no está comprobada. Lea primero un segundo banco de nivel.
set_up_is_closed = { $set_up } ya se quitó. Escoja la puesta actual o ponga el láser otra vez.
set_ups_alike = { $set_up } está casi a la misma altura. Quítela primero o mueva esta medio pie: una lectura no podría decir de cuál láser es.
second_benchmark_there = Esta obra tiene más de un banco de nivel. Lea { $other } para comprobar la puesta.
which_side = { $mark } está a menos de medio pie de un escalón. Diga de qué lado está el estadal.
mark_scraped = { $mark } ya no está en el terreno. Póngala otra vez desde una estaca, un hilo o el control.
same_eyes = { $mark } la puso la misma persona. Otra la mide por segunda vez.
no_line = Esta obra no tiene línea que no se cruce. Agregue una al archivo de obra con no_cross = true.
which_line = Esta obra tiene varias líneas que no se cruzan. Diga a cuál se midió.
call_not_live = Esa orden ya no vale. Mire la pantalla: puede haber una nueva.
nothing_to_rule = { $mark } no espera decisión. Decida sobre marcas que dos lecturas dejaron en duda.
nothing_to_trim = { $mark } está muy justa del lado HONDO: no hay qué recortar. Déjela o póngale un parche de grava.
aim_outside = Esa puntería queda fuera de la tolerancia ({ $low } a { $high }). Apunte dentro o revise la rasante.
say_why = Diga { $what }: queda en el registro.
site_changed_again = La obra cambió otra vez desde que se mostró. Mire la diferencia de nuevo y confirme.
no_site_change = No hay archivo de obra cambiado en espera. No hay nada que confirmar.
cab_taken = El teléfono de { $person } es la pantalla de { $machine }. Primero la entrega quien está en la cabina (PANTALLA, ENTREGAR LA CABINA) o un supervisor (AHORA, teléfonos unidos); después apriete ENTRAR otra vez.
cab_held = El teléfono de { $person } es la pantalla de { $machine }, y mantiene CUCHARÓN ABAJO, o alguien pide entrar o está adentro. Ningún otro teléfono la toma ahora. Si ese teléfono no sirve, un supervisor lo retira; después apriete ENTRAR otra vez.
say_who = Diga primero si usted es { $person }.
not_confirmed = El archivo de obra nombra a { $person }, pero nadie ha confirmado todavía que este teléfono es de { $person }. Lo hace un supervisor en otro teléfono o en la computadora: AHORA, teléfonos unidos.
witness_unknown = El teléfono de un testigo entró antes que { $person }, o un supervisor confirmó de quién es. Pida a otro que mire, o que un supervisor confirme este teléfono: AHORA, teléfonos unidos.
not_all_out = { $person } guía a { $inside } adentro. Diga YA SALÍ cuando todos hayan salido, y cuántos; dijo { $said }.
not_that_question = Esa pregunta era de otra marca. Mande la lectura otra vez.
ticket_lapsed = El boleto { $ticket } vale { $days }, hoy no. Pida otro.
already_in = { $person } ya está adentro en { $machine }. Primero apriete YA SALÍ.
say_out_instead = Usted está adentro. Apriete YA SALÍ cuando haya salido.
not_asked = Nadie espera ya esa respuesta. Mire la lista.
not_in = Nadie está adentro en { $machine } con esa entrada. Mire la lista.
not_your_visit = Esa entrada es de { $person }. Quien vio salir a { $person } lo dice como testigo.
no_witness = Testigo es otra persona, y no el operador de esta máquina. Pida a otro que mire.
answer_first = { $person } pide entrar. Conteste primero: CUCHARÓN ABAJO, ESPERE o NO.
pressed_too_late = Llegó demasiado tarde y no cuenta. Mantenga otra vez.
said_too_late = Usted lo dijo hace { $ms } y apenas llegó. Mire, y dígalo otra vez si sigue siendo así.
day_is_closed = El día está cerrado. Todavía acepta notas, pruebas, consultas y fotos{ $signed ->
        [true] , y enmiendas firmadas
       *[false] { "" }
    }; para seguir excavando, el supervisor abre el día siguiente.
not_ready_to_close = Aún no se puede cerrar el día. Falta: { $missing }.
no_such_reading = La lectura que quiere corregir no está en el registro de hoy. Tome una nueva.
thing-mark = marca
thing-target = rasante
thing-machine = máquina
thing-benchmark = banco de nivel
thing-rod = estadal
thing-laser = láser
thing-set_up = puesta del láser
thing-phone = teléfono
thing-turning_point = punto de liga
thing-mark_or_target = marca o rasante
thing-line = línea que no se cruza
thing-load = carga
thing-patch = parche, marca o rasante
thing-test = prueba de suelo
thing-undercut = sobreexcavación propuesta
thing-face = talud
thing-pins = par de clavos
thing-structure = zapata o muro
thing-utility = línea enterrada
thing-overhead = línea aérea
thing-pile = montón
thing-ticket = boleto
thing-near_miss = casi accidente abierto
thing-visitor = visita
thing-inspection = inspección en espera
thing-query = consulta
thing-photo = foto
role-ground = a quien lleva el estadal
role-operator = al operador
role-supervisor = al supervisor
role-visitor = a una visita
role-hub = al servidor
role-or = { $one } o { $other }
operator_of = al operador de { $machine }
unknown = No existe «{ $name }» ({ $what }) en esta obra. Escoja de la lista.
no_mark_to_tape_from = Diga desde cuál marca va la cinta.
same_name = { $person } ya está aquí, en otro teléfono. Si es usted, dígalo; si no, use otro nombre: { $another }.
same_name_in = { $person } ya está aquí, en otro teléfono, y puede estar ADENTRO en { $machine }. Si es usted, dígalo; si no, use otro nombre: { $another }.
not_competent = Solo la persona competente puede hacer eso: { $names }.
nobody_competent = Solo la persona competente puede hacer eso: el archivo de obra no nombra a nadie; agregue competent = ["…"].
bad_visit = Esa entrada no tiene nombre válido. Abra la página otra vez y pida de nuevo.
people_in = { $many ->
        [one] Adentro en { $machine }: { $people }. Primero salen todos; después se levanta el PARE.
       *[other] Adentro en { $machine }: { $people }. Primero salen todos; después se levanta el PARE.
    }
