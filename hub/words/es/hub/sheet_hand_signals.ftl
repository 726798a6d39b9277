### The sheet of hand signals.

stop_at_once = PARE YA
both_arms_out_sides_palms = Los dos brazos extendidos a los lados, palmas abajo, de un lado a otro. De cualquiera.
hand_signals = Señas
agreed_today = Acordadas hoy:{ " " }
not_agreed_today = SIN ACORDAR HOY. Muéstrense cada seña antes del primer cucharón y díganlo en las revisiones de inicio. Quién, con quién, hora: ______________________
agreed_today_2 = ☑ acordada hoy
not_agreed_today_2 = ☐ sin acordar hoy
one_arm_out_side_palm = Un brazo extendido a un lado, palma abajo, de un lado a otro.
arm_and_forefinger_point_down = Brazo e índice apuntan abajo; la mano hace círculos pequeños.
upper_arm_out_forearm_forefinger = Brazo a un lado, antebrazo e índice hacia arriba; la mano hace círculos pequeños.
arm_straight_out = Brazo extendido; el índice apunta al lado hacia el que se gira.
arm_straight_out_fingers_up = Brazo extendido, dedos arriba; la mano empuja hacia donde se avanza.
one_flat_hand_over_other = Una mano plana sobre la otra: tan separadas como falta por cavar. (Práctica común.)
closed_fist_held_up_still = Puño cerrado, en alto y quieto: a nivel, deje de cavar aquí. (Práctica común; cambia de una cuadrilla a otra.)
one_person_signals = Una sola persona da señas. Cualquiera puede dar PARE, y todo PARE se obedece, lo dé quien lo dé.
you_do_not_see_signaller = No ve a quien da las señas, o no entiende: quieto, cucharón al suelo.
signal_not_agreed_not_signal = Una seña que no se acordó no es una seña: quieto, y pregunte.
stand_where_cab_sees_you = Párese donde lo vean desde la cabina, fuera del giro, nunca detrás de la caseta. Primero la mirada, después las manos.
drawn_after_29_cfr_1926 = Dibujadas según 29 CFR 1926 Subparte CC, Apéndice A (grúas), salvo donde dice práctica común. Su propia norma, el operador y lo que acordó la cuadrilla valen más.
