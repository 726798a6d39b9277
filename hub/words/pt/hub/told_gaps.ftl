### What the log does not say about a call. Portuguese, read by no native speaker.

call = Ordem { $id }, { $line }: nenhuma tela a mostrou.
call_2 = Ordem { $id }, { $line }: mostrada, e ninguém apertou ENTENDI.
screen_not_showing = A tela em { $machine } não aparecia.
no_screen_had_joined_for = Nenhuma tela tinha entrado para { $machine }.
no_rod_reading_within = Nenhuma leitura de mira a menos de { $near }.
before_the_first = antes da primeira
at_all = nenhuma vez
no_tape_to_within = Nenhuma trena até { $id } a menos de { $near } { $what }.
no_good_check_before_first = { $name }: nenhuma conferência boa antes da primeira destas ordens.
no_good_check_after_last = { $name }: nenhuma conferência boa depois da última destas ordens, e nada que valha dos dois jeitos.
no_mark_lies_within = Nenhuma marca fica a menos de { $near }.
nobody_said_from_what_laid = { $id }: ninguém disse a partir de que foi posta.
no_second_person_measured_where = { $id }: nenhuma segunda pessoa a mediu onde está agora.
no_photo_mark_within_reach = Nenhuma foto de uma marca ao alcance.
calls_to_named_no_mark = { $many } ordens a { $machine } não nomearam marca: podem ter sido sobre este lugar.
