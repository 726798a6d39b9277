### Faces and what is buried as sentences. Portuguese, read by no native speaker.

inspected_class = { $zone } inspecionado, classe { $class }: { $seen }. { $by_hand } { $release }
soil_of = Solo de { $zone }: a classe { $from } agora é { $to }: { $why }
by_an_engineer_own_design = { $zone } por projeto próprio do engenheiro: { $why }
came_down = { $zone } caiu: { $length } × { $height } × { $back }, cerca de { $cubic_yards } yd³. { $note }
get_away_from_the_face = AFASTEM-SE DO TALUDE { $zone }: { $what }.
may_stand_under_face_people = { $machine } pode estar embaixo de um talude de que todos tiveram que se afastar: { $zones }.
is_away_from = { $machine } se afastou de { $zone }.
pipe_or_cable_way = Há um tubo ou cabo no caminho
a_buried_line_was_struck = Uma linha enterrada foi atingida
not_drawn = não desenhada
ticket_holds_through_days_more = O protocolo { $ticket } vale até { $to }, mais { $days_left } dias; { $silent } sem resposta.
paint_of_is_gone = A pintura de { $utility } se apagou: peça que marquem de novo.
is_marked_again = { $utility } está marcada de novo.
bared = { $utility } exposta: topo { $top }, { $outside } de diâmetro. { $crossing }
let_go_on = Segue: { $held } Por quê: { $why }
owed_before_digging_to = Devido antes de cavar até { $target }: { $marks }.
pins_open_faster = os pinos { $pins } se abrem mais rápido
it_came_down = caiu
somebody_says_that_it_moves = alguém diz que se move
the_first_tape = { $zone } { $pins }: { $apart }, a primeira medida.
still = imóvel
watch = VIGIAR
get_away = AFASTEM-SE
ft_an_hour = { $zone } { $pins }: { $apart }, { $opened }, { $rate } ft por hora: { $what }.
water = água
a_crack = uma trinca
rain = chuva
vibration = vibração
trimmed_from_the_top_down = acertado de cima para baixo
a_load_from_the_crest = uma carga a { $back } da crista
move_it_back_to = { " " }Leve-a para trás até { $back }.
seen_at = Visto em { $zone }: { $what }.{ $move } { $note }
daylight_of = Encontro de { $zone } com o terreno: { $high } de altura, dentro de toda linha.
daylight_of_over_a_line = ENCONTRO de { $zone } com o terreno ALÉM DE UMA LINHA: { $crossed }; { $high } de altura.
crosses = { $zone } cruza com { $clear }, pede { $need }
struck = { $what }: { $line }.
it_rains = Chove.
the_rain_stopped = A chuva parou.
# $place (text) the face, mark or machine where it stood
water_pumped_out_of = Água bombeada de { $place }.
# $what (text) what is meant, in this language
# $faces (text) the faces, by name
to_be_inspected_after_it = { $what } A inspecionar depois disso: { $faces }.
