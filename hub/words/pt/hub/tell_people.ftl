### People and phones as sentences. Portuguese, read by no native speaker.

joined_says_one_phone = { $person } entrou, e diz ser quem tem o celular { $other }.
joined = { $person } entrou.
screen_settings_changed = Ajustes da tela mudados.
phone_removed = Celular { $device } removido.
codes_renewed = Códigos novos: os velhos não abrem mais nada.
codes_last_until_next_day = Os códigos valem até que se abra o dia seguinte.
codes_last_for_this_week = Os códigos valem por esta semana.
codes_last_until_somebody_makes = Os códigos valem até que alguém faça novos.
cab_takes_phone_scans_its = A cabine de { $machine } aceita o próximo celular que escanear seu código.
confirmed = Confirmado: o celular { $device } é de { $person }.
phone_stays_joined_over_night = O celular de { $person } continua registrado à noite.
phone_does_not_stay_joined = O celular de { $person } não continua registrado à noite.
has_same_phone_as_yesterday = { $person } tem o mesmo celular de ontem.
somebody_else_has_phone_now = Outra pessoa está com o celular de { $person }: ele não está mais registrado.
screen_shows = tela à vista
screen_is_not_showing = A TELA NÃO APARECE
screen_lost = TELA PERDIDA: use sinais com as mãos
a_panel_over_the_number = ; um painel sobre o número; ainda sem som
a_panel_over_the_number_2 = ; um painel sobre o número
no_sound_yet = ; ainda sem som
nothing_over_the_number = ; nada sobre o número; com som
screen = { $machine }: { $what }.
screen_and_page = { $machine }: { $what }{ $own }.
