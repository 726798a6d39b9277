### Where machines stand, near misses, and how a day begins, as sentences.

# $machine (text) the machine's name
# $x (text) how far east
# $y (text) how far north
stands_at = { $machine } stands at { $x }, { $y }.
# $machine (text) the machine's name
has_moved = { $machine } has moved; its place is unknown.
# $machine (text) the machine's name
# $with (text) with whom
agreed_with = { $machine }: AGREED with { $with }.
# $machine (text) the machine's name
# $with (text) with whom
moved = { $machine } moved: what was agreed with { $with } is void.
# $person (text) the person's name or initials
# $machine (text) the machine's name
spots_for = { $person } spots for { $machine }.
# $person (text) the person's name or initials
# $machine (text) the machine's name
spots_for_no_more = { $person } spots for { $machine } no more.
# $number (text) its number
# $then (text) how each machine stood, in this language
near_miss = Near miss { $number }: { $then }.
battery_low_hands_soon = battery low, hands soon
battery_charges = battery charges
# $other (text) the other one's name
# $apart (text) how far apart
# $needs (text) how much is needed
can_meet_apart_needed = can meet { $other }, { $apart } apart, { $needs } needed
# $inside (text) how many are in, or how far inside
# $zone (text) the face's name
tracks_inside_slope_competent_person = tracks { $inside } inside the slope of { $zone }, the competent person rules
# $clearance (text) how much is usual
# $line (text) the line: its name, or what a call says
can_come_within_overhead_spotter = can come within { $clearance } of { $line } overhead, a spotter is needed
# $at (text) where
# $apart (text) how far apart
its_tail_pinches_at_away = its tail pinches at { $at }, { $apart } away
# $machine (text) the machine's name
place_unknown = { $machine } place unknown
# $name (text) its name
# $words (text) what somebody wrote
near_miss_closed = { $name } closed: { $words }
# $said (text) what was said
# $of (text) of how many, or of whom
day_ready = Day READY: { $said } of { $of } start checks
# $machine (text) the machine's name
# $what (text) what is meant, in this language
# $percent (text) in percent
battery = { $machine }: { $what }{ $percent }.
# $machine (text) the machine's name
# $each (text) what is near, in this language
near = { $machine }: { $each }.
# $machine (text) the machine's name
# $side (text) which side
keeps_out_of = { $machine } keeps out of the { $side }
