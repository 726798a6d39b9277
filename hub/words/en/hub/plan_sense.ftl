### What is odd in a plan.

# $x (text) how far east
# $y (text) how far north
# $elevation (text) the elevation
point_east_north_elevation_stands = The point at east { $x }, north { $y }, elevation { $elevation }, stands steeper than 1 to 1 from all its neighbours. Was it mistyped?
# $here (text) the mark's name
# $off (text) how far off, or by how much it differs
# $before (text) the mark before it
# $after (text) the mark behind it
ft_off_line_from = { $here } is { $off } ft off the line from { $before } to { $after }. Is a step meant there?
# $mark (text) the mark's name
# $by (text) by how much, or by whom
dig_lies_above_existing_ground = { $mark }: the dig-to lies { $by } above existing ground. That is fill, not cut: is it meant?
no_two_found_pins_stand = No two found pins stand apart: nothing shows that the frame is right.
# $scale (text) how much it measures of the plan
between_pins_site_measures_plan = Between the pins the site measures { $scale } of the plan, more than one in 5000 off.
pins_fit_if_plan_were = The pins fit if the plan were in metres. Nothing was changed.
pins_fit_if_site_had = The pins fit if the site had been measured in metres. Nothing was changed.
# $pin (text) the pin's name
# $by (text) by how much, or by whom
pin_stands_off_where_others = Pin { $pin } stands { $by } off where the others put it.
# $turned (text) by how many degrees
pins_lie_turned_by_frame = The pins lie turned by { $turned }° to the frame. Check `turn`.
# $id (text) its name
# $ft (text) how many feet
# $meant (text) the same in inches
ground_ft_off_would_grade = { $id }: ground { $ft } ft off would be on grade. If inches are meant, write { $meant }.
# $id (text) its name
# $said (text) what was said
# $one (text) the first one
# $two (text) the second thickness
# $both (text) the sum
taken_off_twice_ft_ft = { $id }: “{ $said }” is taken off twice, { $one } ft and { $two } ft: the dig-to lies { $both } ft under the surface for it. Under a pipe, `bedding` and `wall` are layers already: take one of the two out, or name them apart.
# $id (text) its name
# $said (text) what was said
# $thick (text) how thick
# $meant (text) the same in inches
ft_thick_dig_lies_so = { $id }: “{ $said }” is { $thick } ft thick, and the dig-to lies so much deeper. If inches are meant, write { $meant }.
# $id (text) its name
# $said (text) what was said
# $deep (text) how deep
# $meant (text) the same in inches
the_undercut_goes_ft_deeper = { $id }: the undercut “{ $said }” goes { $deep } ft deeper. If inches are meant, write { $meant }.
# $at (text) where
# $by (text) by how much, or by whom
# $height (text) how high
the_step_at_is_high = The step at { $at } is { $by } high: not a whole number of forms of { $height }.
# $at (text) where
# $error (text) what is wrong, in this language
the_step_at = The step at { $at }: { $error }
# $from (text) from where
# $to (text) to where or to whom
# $fall (text) in percent
# $least (text) the least that is allowed
from_pipe_falls_less_than = From { $from } to { $to } the pipe falls { $fall } %, less than { $least } %.
# $a (text) the first one
# $b (text) the second one
# $c (text) where the line begins
# $d (text) where the line ends
profile_goes_from_line_from = The profile goes from { $a } to { $b }, the line from { $c } to { $d }: what one of them leaves out has no grade.
# $one_id (text) the first one's name
# $other_id (text) the other one's name
# $apart (text) how far apart
and_end_apart = { $one_id } and { $other_id } end { $apart } apart: should they meet?
# $one_id (text) the first one's name
# $other_id (text) the other one's name
# $by (text) by how much, or by whom
where_meet_their_dig_tos = Where { $one_id } and { $other_id } meet, their dig-tos are { $by } apart. Is a step meant there?
# $at (text) where
# $a (text) the first one
# $b (text) the second one
# $clear (text) how much lies between them
# $clearance (text) how much is usual
cross_with_between_them = At { $at }, { $a } and { $b } cross with { $clear } between them; { $clearance } is usual.
