### Spanish: calls and what became of them. What each variable is stands in the English file.

states-waiting = ENVIANDO
states-not_sent = SIN ENVIAR – USE LAS MANOS
states-sent = ENVIADO
states-delivered = EN EL TELÉFONO DE LA CABINA
states-shown = EN LA PANTALLA DE LA CABINA
states-got = EN LA CABINA APRETARON ENTENDIDO
states-not_on_screen = NO ESTÁ EN LA PANTALLA DE LA CABINA – USE LAS MANOS
nodded = { $who } VIO ASENTIR EN LA CABINA

endings-superseded = LA REEMPLAZÓ OTRA ORDEN
endings-done = HECHO
endings-stale_by_age = VIEJA – QUITADA
endings-grade_ran_out = YA SE DIJO A NIVEL
endings-stale_by_laser = LÁSER EN DUDA – QUITADA
endings-stale_by_mark = MARCA PUESTA OTRA VEZ – QUITADA
endings-stale_by_target = CAMBIÓ LA RASANTE – QUITADA
endings-restated = CORREGIDA
endings-withdrawn = RETIRADA
endings-refused = LA CABINA NO PUEDE
endings-new_screen = TELÉFONO NUEVO EN LA CABINA
endings-ruled = DECIDIDO
endings-stale_by_face = ALEJADOS DEL TALUD – QUITADA
endings-query_asked = SE CONSULTÓ AL INGENIERO – QUITADA
endings-day_closed = DÍA CERRADO
endings-held = TRABAJO DETENIDO AHÍ – QUITADA
endings-machine_moved = LA MÁQUINA SE MOVIÓ – QUITADA
endings-given_away = PASÓ A OTRA MÁQUINA
endings-off_site = MÁQUINA FUERA DE LA OBRA
endings-clock_behind = EDAD DESCONOCIDA – QUITADA

ended-superseded = ORDEN MÁS NUEVA
ended-done = HECHO
ended-stale_by_age = VIEJA – PREGUNTE
ended-grade_ran_out = YA SE DIJO A NIVEL
ended-stale_by_laser = LÁSER EN DUDA
ended-stale_by_mark = MARCA PUESTA OTRA VEZ
ended-stale_by_target = CAMBIÓ LA RASANTE
ended-restated = NÚMERO MALO
ended-withdrawn = RETIRADA
ended-refused = USTED DIJO NO PUEDO
ended-new_screen = TELÉFONO NUEVO
ended-ruled = DECIDIDO
ended-stale_by_face = ALEJADOS DEL TALUD
ended-query_asked = SE CONSULTÓ AL INGENIERO
ended-day_closed = DÍA CERRADO
ended-held = TRABAJO DETENIDO
ended-machine_moved = MÁQUINA MOVIDA
ended-given_away = PASÓ A OTRA MÁQUINA
ended-off_site = FUERA DE LA OBRA
ended-clock_behind = EDAD DESCONOCIDA
endedDo = El número se quitó. Pregunte a quien está en el piso.
callStands = ORDEN
northLetter = N
toThe = AL { $side }

labels-one_benchmark = UN SOLO BANCO
labels-not_checked = LÁSER SIN REVISAR
labels-high_by_rule = ALTO POR REGLA
labels-by_ruling = POR DECISIÓN
labels-confirmed = PREGUNTADO Y CONFIRMADO
labels-not_proved = RASANTE ESCRITA UNA SOLA VEZ
labels-hand_dig = CAVE A MANO
labels-face_not_inspected = TALUD SIN INSPECCIÓN
notCheckedSince = LÁSER SIN REVISAR DESDE { $at }

quick-more = MÁS
quick-a_little = UN POCO
quick-there = AHÍ
quick-too_deep = MUY HONDO
quick-come_to_me = VENGA A MÍ
quick-look_here = MIRE AQUÍ
byEye = A OJO

ways-down = BAJE
ways-shave = RASPE
ways-grade = A NIVEL
ways-up = SUBA
ways-wait = ESPERE
ways-ruling = DECIDE EL SUPERVISOR
feetWord = PIES
inchWord = PULG
wholeFeet =
    { $feet ->
        [one] 1 PIE
       *[other] { $feet } PIES
    }
high = ALTO
low = HONDO
groundIs = El suelo está { $word } { $by }
onGrade = A NIVEL { $dev }
tooClose = MUY JUSTO { $dev }
groundOn = El suelo está a nivel ({ $dev })
groundClose = Muy justo para decidir ({ $dev }). Después lea otra vez.
told = { $machine }: { $call }

cant-hard_ground = SUELO DURO
cant-water = AGUA
cant-pipe = TUBO
cant-line = LÍNEA
cant-face = TALUD
cant-other = OTRO
