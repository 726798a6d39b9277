### What ties are refused for.

# $mark (text) the mark's name
# $error (text) what is wrong, in this language
of = { $mark }: { $error }
# $mark (text) the mark's name
tapes_lie_one_line_place = { $mark }: the tapes lie in one line and the place slides. Take another pair.
# $mark (text) the mark's name
# $off (text) how far off, or by how much it differs
# $doubt_ft (text) how good the tapes are, in feet
by_these_tapes_lies_from = By these tapes { $mark } lies { $off } from where the plan has it; tapes there are good to ±{ $doubt_ft } ft. Hold both level, see where their ends are held, and read them again.
