### What proves the laser, as sentences.

# $readings (text) how many readings
# $set_up (text) the laser set-up as people read it: SETUP-1
# $marks (text) the marks: names, or how many
# $residual (text) how far off, with its sign
# $again (text) marks to shoot again
# $stand (text) marks that stand
readings_marks_judged_both_ways = { $readings } readings of { $set_up } on { $marks } marks judged both ways ({ $residual }): re-shoot { $again }; { $stand } stand.
# $readings (text) how many readings
# $set_up (text) the laser set-up as people read it: SETUP-1
# $marks (text) the marks: names, or how many
# $unproven (text) marks that nothing proves
readings_marks_are_unproven = { $readings } readings of { $set_up } on { $marks } marks are UNPROVEN: { $unproven }.
it_was_bumped = it was bumped
repeats_do_not_agree = repeats do not agree
not_checked_for_twice_interval = NOT CHECKED for twice the interval
the_interval_has_passed = the interval has passed
n25_readings_since = 25 readings since
the_temperature_changed = the temperature changed
work_starts_again = work starts again
# $set_up (text) the laser set-up as people read it: SETUP-1
# $what (text) what is meant, in this language
check_of_is_due = Check of { $set_up } is due: { $what }.
everything_is_found_higher = { " " }Everything is found HIGHER: check the laser now.
everything_is_found_lower = { " " }Everything is found LOWER: check the laser now.
# $mark (text) the mark's name
# $set_up (text) the laser set-up as people read it: SETUP-1
# $off (text) how far off, or by how much it differs
# $what (text) what is meant, in this language
repeated_from = { $mark } repeated from { $set_up }: { $off } against its acceptance.{ $what }
the_reading_was_right = the reading was right
slip_one_suggested = a slip, and the one suggested
a_slip_another_than_suggested = a slip, another than suggested
# $question (text) the question
# $what (text) what is meant, in this language
question_answered = Question { $question } answered: { $what }.
to_service = : TO SERVICE
# $laser (text) the laser's name
# $found (text) what was found
# $what (text) what is meant, in this language
tested = { $laser } tested: { $found } in 100 ft{ $what }.
# $from (text) from where
# $to (text) to where or to whom
# $turns (text) how many set-ups
# $misclosure (text) by how much it does not close
levels_from_to = Levels from { $from } to { $to }: { $turns } set-ups, off by { $misclosure }, adjusted.
# $benchmark (text) the benchmark's name
# $elevation (text) the elevation
# $note (text) what somebody noted
benchmark_added_at = Benchmark { $benchmark } added at { $elevation }: { $note }
they_agree = they agree
check_both = CHECK BOTH
# $first (text) the first one
# $second (text) the second one
# $off (text) how far off, or by how much it differs
# $what (text) what is meant, in this language
one_point_from_and = One point from { $first } and { $second }: { $off }, { $what }.
# $mark (text) the mark's name
# $names (text) their names, with commas between
# $off (text) how far off, or by how much it differs
shot_twice_second_time_blind = { $mark } shot twice, the second time blind ({ $names }): { $off }.
