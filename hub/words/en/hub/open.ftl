### What is open, and what is to be done.

# $person (text) the person's name or initials
# $machine (text) the machine's name
may_still_keep_out = { $person } may still be in the keep-out of { $machine }: nobody has said OUT.
# $machine (text) the machine's name
# $by (text) by how much, or by whom
# $why (text) the reason, as it was said or found
is_stopped_by = { $machine } is stopped by { $by }: { $why }
# $person (text) the person's name or initials
has_not_said_off_site = { $person } has not said OFF SITE.
# $name (text) its name
# $why (text) the reason, as it was said or found
is_not_closed = { $name } is not closed: { $why }
# $zone (text) the face's name
everybody_had_get_away_from = Everybody had to get away from { $zone }; nobody under it before the competent person has inspected it.
# $zone (text) the face's name
waits_for_an_inspection = { $zone } waits for an inspection.
# $zone (text) the face's name
pins_move = { $zone } is watched: its pins move.
# $mark (text) the mark's name
# $set_up (text) the laser set-up as people read it: SETUP-1
measured_with_while_doubt = { $mark }: measured with { $set_up } while it was in doubt; shoot it again.
# $name (text) its name
no_good_check_after_its = { $name }: no good check after its last reading. Shoot a benchmark.
# $id (text) its name
# $asked (text) what or who was asked
# $question (text) the question
has_not_answered = { $id }: { $asked } has not answered: { $question }
# $what (text) what is meant, in this language
# $of (text) of how many, or of whom
has_not_inspected_it = { $what }: { $of } has not inspected it.
# $what (text) what is meant, in this language
# $mark (text) the mark's name
# $since (text) what happened since, in this language
inspection_does_not_count_any = { $what }: the inspection does not count any more, at { $mark } { $since }; ask for another.
# $who (text) who
photo_still_phone = A photo is still on { $who }'s phone.
# $id (text) its name
# $machine (text) the machine's name
# $at (text) where
# $line (text) the line: its name, or what a call says
call_to = Call { $id } to { $machine }, { $at } { $line }: no screen has painted it.
# $mark (text) the mark's name
# $id (text) its name
question_entry_has_no_answer = { $mark }: the question of entry { $id } has no answer.
# $target (text) the target's name
two_people_typed_it_differently = { $target }: two people typed it differently.
# $target (text) the target's name
# $revision (text) the number of the revision
typed_by_one_alone = { $target } r{ $revision }: nobody has typed it a second time.
# $id (text) its name
its_paint_is_gone = { $id }: its paint is gone.
# $id (text) its name
# $what (text) what is meant, in this language
accepted_but_since = { $id }: accepted, but { $what } since; look and shoot it again.
# $id (text) its name
# $dev (text) how far from grade, with its sign
was_before_its_target_changed = { $id } was { $dev } before its target changed: shoot it again.
# $id (text) its name
# $dev (text) how far from grade, with its sign
stands_high_by = { $id } stands HIGH by { $dev }: never brought to grade.
# $id (text) its name
# $dev (text) how far from grade, with its sign
is_low_by = { $id } is LOW by { $dev }: no patch and no ruling.
# $id (text) its name
# $dev (text) how far from grade, with its sign
too_close_call_nobody_has = { $id }, { $dev }: too close to call, and nobody has ruled.
# $target (text) the target's name
# $names (text) their names, with commas between
nobody_has_read = { $target }: nobody has read { $names }.
# $run (text) the run's name
# $all (text) how many, or how much, of all
# $where (text) where
not_proven_stations = { $run }: { $all } not proven, stations { $where }.
# $line (text) the line: its name, or what a call says
# $names (text) their names, with commas between
not_proven_no_tape_at = { $line }: not proven, no tape at { $names }.
# $mark (text) the mark's name
the_soil_test_failed = { $mark }: the soil test failed; test again.
# $mark (text) the mark's name
soil_test_does_not_count = { $mark }: the soil test does not count any more; test again.
# $name (text) its name
# $mark (text) the mark's name
# $cy (text) how many cubic yards
at_cy_is_not_done = { $name } at { $mark }, { $cy } cy, is not done.
# $short (text) how many tons are missing
gravel_order_t_short_what = Gravel on order is { $short } t short of what is enough nine times in ten.
# $mark (text) the mark's name
undercut_waits_for_supervisor_engineer = The undercut at { $mark } waits for a supervisor on the engineer's word.
# $target (text) the target's name
no_soil_test_log = { $target }: no soil test is in the log.
# $zone (text) the face's name
# $many (number) how many
is_watched = { $many ->
        [one] { $zone } is watched: 1 thing was seen at it.
       *[other] { $zone } is watched: { $many } things were seen at it.
    }
