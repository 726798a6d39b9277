### Set-ups and check shots as sentences.

set_up_on = { $set_up } puesta sobre { $benchmark }: altura { $height }.
restated_on = { $set_up } corregida sobre { $benchmark }: altura { $height }.
taken_down = { $what } quitada. { $why }
good = bien
shoot_again = lea otra vez
failed = FALLÓ
check_of_on = Revisión de { $set_up } en { $benchmark }: { $off }, { $what }.
check_on_off_by = revisión en { $benchmark } con { $residual }
bumped_says = golpeada, dice { $by }
elevation_changed_by = la elevación de { $benchmark } cambió { $by }
in_doubt = { $set_up } EN DUDA: { $what }. Cabinas en pausa.
agrees = { $benchmark } concuerda
and_agree = { $first } y { $second } concuerdan
levelled_again_off_by = nivelada otra vez, con { $disagreement }
one_benchmark_nothing_else_behind = UN SOLO BANCO, nada más detrás
takes_readings_now = { $set_up } ya da lecturas: { $what }.
set_up_sloped_on = { $set_up } puesta sobre { $benchmark }: altura { $height }, inclinada { $east } % al este, { $north } % al norte.
