### Faces and what is buried as sentences.

inspected_class = { $zone } inspeccionado, clase { $class }: { $seen }. { $by_hand } { $release }
soil_of = Suelo de { $zone }: clase { $from } ahora es { $to }: { $why }
by_an_engineer_own_design = { $zone } según diseño propio del ingeniero: { $why }
came_down = Se cayó { $zone }: { $length } × { $height } × { $back }, unas { $cubic_yards } yd³. { $note }
get_away_from_the_face = ALÉJENSE DEL TALUD { $zone }: { $what }.
may_stand_under_face_people = { $machine } puede estar al pie de un talud del que hubo que alejarse: { $zones }.
is_away_from = { $machine } se alejó de { $zone }.
pipe_or_cable_way = Hay un tubo o cable en el camino
a_buried_line_was_struck = Se golpeó una línea enterrada
not_drawn = no está dibujada
ticket_holds_through_days_more = Boleto { $ticket } vale hasta { $to }, { $days_left } días más; { $silent } sin responder.
paint_of_is_gone = Se borró la marca de { $utility }: pida otra.
is_marked_again = { $utility } está marcada otra vez.
bared = { $utility } destapada: arriba { $top }, { $outside } de ancho. { $crossing }
let_go_on = Sigue: { $held } Por qué: { $why }
owed_before_digging_to = Se debe antes de excavar { $target }: { $marks }.
pins_open_faster = los clavos { $pins } se abren más rápido
it_came_down = se cayó
somebody_says_that_it_moves = dicen que se mueve
the_first_tape = { $zone } { $pins }: { $apart }, primera cinta.
still = sin moverse
watch = VIGILAR
get_away = ALÉJENSE
ft_an_hour = { $zone } { $pins }: { $apart }, { $opened }, { $rate } ft por hora: { $what }.
water = agua
a_crack = una grieta
rain = lluvia
vibration = vibración
trimmed_from_the_top_down = perfilado de arriba abajo
a_load_from_the_crest = carga a { $back } de la corona
move_it_back_to = { " " }Aléjela a { $back }.
seen_at = Visto en { $zone }: { $what }.{ $move } { $note }
daylight_of = Línea de ceros de { $zone }: { $high } de alto, dentro de toda línea.
daylight_of_over_a_line = LÍNEA DE CEROS de { $zone } sobre una línea: { $crossed }; { $high } de alto.
crosses = { $zone } cruza con { $clear }, pide { $need }
struck = { $what }: { $line }.
it_rains = Llueve.
the_rain_stopped = Paró la lluvia.
# $place (text) the face, mark or machine where it stood
water_pumped_out_of = Se bombeó el agua de { $place }.
# $what (text) what is meant, in this language
# $faces (text) the faces, by name
to_be_inspected_after_it = { $what } Por inspeccionar después de esto: { $faces }.
