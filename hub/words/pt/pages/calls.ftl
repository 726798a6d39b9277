### Portuguese, read by no native speaker: calls and what became of them. What each variable is stands in the English file.

states-waiting = ENVIANDO
states-not_sent = NÃO ENVIADA – USE AS MÃOS
states-sent = ENVIADA
states-delivered = NO CELULAR DA CABINE
states-shown = NA TELA DA CABINE
states-got = NA CABINE APERTARAM ENTENDI
states-not_on_screen = NÃO ESTÁ NA TELA DA CABINE – USE AS MÃOS
nodded = { $who } VIU A CABINE ACENAR QUE SIM

endings-superseded = HÁ ORDEM MAIS NOVA
endings-done = FEITO
endings-stale_by_age = VELHA – REMOVIDA
endings-grade_ran_out = JÁ FOI DITO NA COTA
endings-stale_by_laser = LASER EM DÚVIDA – REMOVIDA
endings-stale_by_mark = MARCA POSTA DE NOVO – REMOVIDA
endings-stale_by_target = O GREIDE MUDOU – REMOVIDA
endings-restated = CORRIGIDA
endings-withdrawn = RETIRADA
endings-refused = A CABINE NÃO PODE
endings-new_screen = CELULAR NOVO NA CABINE
endings-ruled = DECIDIDO
endings-stale_by_face = LONGE DO TALUDE – REMOVIDA
endings-query_asked = ENGENHEIRO CONSULTADO – REMOVIDA
endings-day_closed = DIA FECHADO
endings-held = TRABALHO SUSPENSO ALI – REMOVIDA
endings-machine_moved = A MÁQUINA SE MOVEU – REMOVIDA
endings-given_away = PASSOU A OUTRA MÁQUINA
endings-off_site = MÁQUINA FORA DO ARQUIVO DA OBRA
endings-clock_behind = IDADE DESCONHECIDA – REMOVIDA

ended-superseded = ORDEM MAIS NOVA
ended-done = FEITO
ended-stale_by_age = VELHA – PERGUNTE
ended-grade_ran_out = JÁ FOI DITO NA COTA
ended-stale_by_laser = LASER EM DÚVIDA
ended-stale_by_mark = MARCA POSTA DE NOVO
ended-stale_by_target = O GREIDE MUDOU
ended-restated = NÚMERO ERRADO
ended-withdrawn = RETIRADA
ended-refused = VOCÊ DISSE NÃO POSSO
ended-new_screen = CELULAR NOVO
ended-ruled = DECIDIDO
ended-stale_by_face = LONGE DO TALUDE
ended-query_asked = ENGENHEIRO CONSULTADO
ended-day_closed = DIA FECHADO
ended-held = TRABALHO SUSPENSO
ended-machine_moved = A MÁQUINA SE MOVEU
ended-given_away = PASSOU A OUTRA MÁQUINA
ended-off_site = FORA DO ARQUIVO DA OBRA
ended-clock_behind = IDADE DESCONHECIDA
endedDo = O número foi removido. Pergunte a quem está em solo.
callStands = ORDEM
northLetter = N
toThe = A { $side }

labels-one_benchmark = UMA SÓ RN
labels-not_checked = LASER NÃO CONFERIDO
labels-high_by_rule = ALTO POR REGRA
labels-by_ruling = POR DECISÃO
labels-confirmed = PERGUNTADO E CONFIRMADO
labels-not_proved = GREIDE DIGITADO UMA SÓ VEZ
labels-hand_dig = CAVE À MÃO
labels-face_not_inspected = TALUDE SEM INSPEÇÃO
notCheckedSince = LASER NÃO CONFERIDO DESDE { $at }

quick-more = MAIS
quick-a_little = UM POUCO
quick-there = AÍ
quick-too_deep = FUNDO DEMAIS
quick-come_to_me = VENHA A MIM
quick-look_here = OLHE AQUI
byEye = A OLHO

ways-down = DESÇA
ways-shave = RASPE
ways-grade = NA COTA
ways-up = SUBA
ways-wait = ESPERE
ways-ruling = O SUPERVISOR DECIDE
feetWord = PÉS
inchWord = POL
wholeFeet =
    { $feet ->
        [one] { $feet } PÉ
       *[other] { $feet } PÉS
    }
high = ALTO
low = FUNDO
groundIs = O terreno está { $word } { $by }
onGrade = NA COTA { $dev }
tooClose = NO LIMITE { $dev }
groundOn = O terreno está na cota ({ $dev })
groundClose = No limite, não dá para decidir ({ $dev }). Depois disto leia de novo.
told = { $machine }: { $call }

cant-hard_ground = TERRENO DURO
cant-water = ÁGUA
cant-pipe = TUBO
cant-line = LINHA
cant-face = TALUDE
cant-other = OUTRO
