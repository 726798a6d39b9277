### What is looked at before a day begins.

hat_and_vest = hat and vest
hand_signals = hand signals
first_aid = first aid
overhead_lines = overhead lines
locate_tickets = locate tickets
laser_and_rods = laser and rods
ladders_and_barricades = ladders and barricades
stop = STOP
lower = LOWER
raise = RAISE
swing = SWING
travel = TRAVEL
so_much = SO MUCH
grade = GRADE
those_words_cant_stand_for = Those words can't stand for today. Say what you saw.
name_signals_were_agreed = Name the signals that were agreed. STOP is one of them.
say_what_you_saw = Say what you saw: a tick alone says nothing tomorrow.
# $names (text) their names, with commas between
not_ready = Not ready: { $names } has no value. Say what was seen, or why the day begins without it.
