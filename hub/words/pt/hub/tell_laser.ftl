### Set-ups and check shots as sentences. Portuguese, read by no native speaker.

set_up_on = { $set_up } instalada sobre { $benchmark }: AI { $height }.
restated_on = { $set_up } corrigida sobre { $benchmark }: AI { $height }.
taken_down = { $what } desmontada. { $why }
good = bom
shoot_again = leia de novo
failed = FALHOU
check_of_on = Conferência de { $set_up } em { $benchmark }: { $off }, { $what }.
check_on_off_by = a conferência em { $benchmark } diferiu { $residual }
bumped_says = bateram nele, diz { $by }
elevation_changed_by = a cota de { $benchmark } mudou { $by }
in_doubt = { $set_up } EM DÚVIDA: { $what }. Cabines em pausa.
agrees = { $benchmark } concorda
and_agree = { $first } e { $second } concordam
levelled_again_off_by = nivelado de novo, difere { $disagreement }
one_benchmark_nothing_else_behind = UMA SÓ RN, nada mais por trás
takes_readings_now = { $set_up } já aceita leituras: { $what }.
set_up_sloped_on = { $set_up } instalada sobre { $benchmark }: AI { $height }, inclinada { $east } % leste, { $north } % norte.
