### The sheet of hand signals. Portuguese, read by no native speaker.

stop_at_once = PARE JÁ
both_arms_out_sides_palms = Os dois braços estendidos para os lados, palmas para baixo, para a frente e para trás. De qualquer pessoa.
hand_signals = Sinais com as mãos
agreed_today = Combinados hoje:{ " " }
not_agreed_today = NÃO COMBINADOS HOJE. Mostrem cada sinal um ao outro antes da primeira caçamba, depois digam nas conferências ao começar. Quem, com quem, hora: ______________________
agreed_today_2 = ☑ combinado hoje
not_agreed_today_2 = ☐ não combinado hoje
one_arm_out_side_palm = Um braço estendido para o lado, palma para baixo, para a frente e para trás.
arm_and_forefinger_point_down = Braço e indicador apontam para baixo; a mão faz círculos pequenos.
upper_arm_out_forearm_forefinger = Braço para o lado, antebraço e indicador para cima; a mão faz círculos pequenos.
arm_straight_out = Braço estendido; o indicador aponta para o lado do giro.
arm_straight_out_fingers_up = Braço estendido, dedos para cima; a mão empurra no sentido em que se anda.
one_flat_hand_over_other = Uma mão plana sobre a outra: tão afastadas quanto ainda falta cavar. (Prática comum.)
closed_fist_held_up_still = Punho fechado, no alto e parado: na cota, pare de cavar aqui. (Prática comum; muda de equipe para equipe.)
one_person_signals = Uma só pessoa dá os sinais. Qualquer um pode dar PARE, e todo PARE é obedecido, seja de quem for.
you_do_not_see_signaller = Você não vê quem dá os sinais, ou não entende: fique parado, caçamba no chão.
signal_not_agreed_not_signal = Um sinal que não foi combinado não é um sinal: fique parado e pergunte.
stand_where_cab_sees_you = Fique onde a cabine vê você, fora do giro, nunca atrás da parte giratória. Primeiro os olhos, depois as mãos.
drawn_after_29_cfr_1926 = Desenhados conforme 29 CFR 1926 Subparte CC, Apêndice A (guindastes), exceto onde se diz prática comum. A norma do lugar, o operador e o que a equipe combinou vêm primeiro.
