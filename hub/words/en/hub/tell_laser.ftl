### Set-ups and check shots as sentences.

# $set_up (text) the laser set-up as people read it: SETUP-1
# $benchmark (text) the benchmark's name
# $height (text) how high
set_up_on = { $set_up } set up on { $benchmark }: HI { $height }.
# $set_up (text) the laser set-up as people read it: SETUP-1
# $benchmark (text) the benchmark's name
# $height (text) how high
restated_on = { $set_up } restated on { $benchmark }: HI { $height }.
# $what (text) what is meant, in this language
# $why (text) the reason, as it was said or found
taken_down = { $what } taken down. { $why }
good = good
shoot_again = shoot again
failed = FAILED
# $set_up (text) the laser set-up as people read it: SETUP-1
# $benchmark (text) the benchmark's name
# $off (text) how far off, or by how much it differs
# $what (text) what is meant, in this language
check_of_on = Check of { $set_up } on { $benchmark }: { $off }, { $what }.
# $benchmark (text) the benchmark's name
# $residual (text) how far off, with its sign
check_on_off_by = check on { $benchmark } off by { $residual }
# $by (text) by how much, or by whom
bumped_says = bumped, says { $by }
# $benchmark (text) the benchmark's name
# $by (text) by how much, or by whom
elevation_changed_by = the elevation of { $benchmark } was changed by { $by }
# $set_up (text) the laser set-up as people read it: SETUP-1
# $what (text) what is meant, in this language
in_doubt = { $set_up } IN DOUBT: { $what }. Cabs paused.
# $benchmark (text) the benchmark's name
agrees = { $benchmark } agrees
# $first (text) the first one
# $second (text) the second one
and_agree = { $first } and { $second } agree
# $disagreement (text) how far it came out
levelled_again_off_by = levelled again, off by { $disagreement }
one_benchmark_nothing_else_behind = ONE BENCHMARK, nothing else behind it
# $set_up (text) the laser set-up as people read it: SETUP-1
# $what (text) what is meant, in this language
takes_readings_now = { $set_up } takes readings now: { $what }.
# $set_up (text) the laser set-up as people read it: SETUP-1
# $benchmark (text) the benchmark's name
# $height (text) how high
# $east (text) how far east
# $north (text) how far north
set_up_sloped_on = { $set_up } set up on { $benchmark }: HI { $height }, sloped { $east } % east, { $north } % north.
