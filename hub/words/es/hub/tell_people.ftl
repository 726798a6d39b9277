### People and phones as sentences.

joined_says_one_phone = Entró { $person }; dice ser quien tiene el teléfono { $other }.
joined = Entró { $person }.
screen_settings_changed = Pantalla ajustada.
phone_removed = Teléfono { $device } retirado.
codes_renewed = Códigos nuevos: los viejos ya no abren.
codes_last_until_next_day = Los códigos valen hasta que se abra el día siguiente.
codes_last_for_this_week = Los códigos valen toda esta semana.
codes_last_until_somebody_makes = Los códigos valen hasta que alguien haga nuevos.
cab_takes_phone_scans_its = La cabina de { $machine } pasa al teléfono que escanee su código.
confirmed = Confirmado: el teléfono { $device } es de { $person }.
phone_stays_joined_over_night = El teléfono de { $person } sigue registrado de noche.
phone_does_not_stay_joined = El teléfono de { $person } no sigue registrado de noche.
has_same_phone_as_yesterday = { $person } tiene el mismo teléfono que ayer.
somebody_else_has_phone_now = Otra persona tiene el teléfono de { $person }: ya no está registrado.
screen_shows = pantalla a la vista
screen_is_not_showing = LA PANTALLA NO SE VE
screen_lost = PANTALLA PERDIDA: use señas
a_panel_over_the_number = ; un panel sobre el número; aún sin sonido
a_panel_over_the_number_2 = ; un panel sobre el número
no_sound_yet = ; aún sin sonido
nothing_over_the_number = ; nada sobre el número; con sonido
screen = { $machine }: { $what }.
screen_and_page = { $machine }: { $what }{ $own }.
