### What a reading is refused for.

# $longest_name (text) how many letters a name may have
say_whose_reading_as_paper = Say whose reading it is, as the paper has it: 1 to { $longest_name } letters.
# $id (text) its name
did_not_stand_yet_time = { $id } did not stand yet at that time, or stood at another height. Pick the set-up of the sheet, or mend the time.
# $mark (text) the mark's name
mark_this_site_has_its = { $mark } is a mark of this site and has its own place. Leave the name out, or give this place another.
# $name (text) its name
tapes_lie_one_line_place = { $name }: the tapes lie in one line and the place slides. Take another pair of marks.
give_most_three_readings_one = Give at most three readings of one rocked rod.
readings_rocked_rod_differ_by = The readings of the rocked rod differ by more than a lean can do. Hold it plumb and read again.
# $mark (text) the mark's name
has_no_target = { $mark } has no target: a receiver can't be set to grade there. Read the rod instead.
# $text (text) as it was typed
not_number_tenths = “{ $text }” is not a number of tenths. Tap how many tenths the ground is high or low, such as 2 or 3.5.
# $mark (text) the mark's name
# $what (text) what is meant, in this language
at_mark = { $mark }: { $what }
