### What is wrong with a site.

the_site_has_no_name = The site has no name. Give it the name that the crew uses.
no_benchmark = no benchmark: nothing can be levelled
no_machine = no machine: nobody can be called
no_rod = no rod: nothing can be read
no_laser = no laser: nothing can be set up
# $without (text) what it lacks, in this language
the_site_has = The site has { $without }. Add one.
# $list (text) the things of this kind, as a list
one_has_no_name = One of the { $list } has no name. Name it.
# $name (text) its name
# $list (text) the things of this kind, as a list
stands_twice_among_the = “{ $name }” stands twice among the { $list }. Rename or remove one.
# $one (text) the first one
# $other (text) the other one's name
# $apart (text) how far apart
and_are_only_apart = { $one } and { $other } are only { $apart } apart: a mix-up could not be noticed. Add a third.
a_doubt_cant_be_negative = A doubt can't be negative.
a_tolerance_cant_be_negative = A tolerance can't be negative: give how much high and how much low is allowed, both as plain amounts.
guard_factor_must_lie_between = The guard factor must lie between 0 and 3: 1 is usual, 1.65 where the drawing asks for proof.
say_which_surface_elevation_such = Say which surface the elevation is of, such as "top of footing": a bare number could be any of them.
# $mark (text) the mark's name
# $name (text) its name
names_target_which_not_this = { $mark } names the target “{ $name }”, which is not on this site.
# $mark (text) the mark's name
# $name (text) its name
no_machine_works_so_its = { $mark }: no machine works on { $name }, so its readings will tell nobody.
line_needs_least_two_points = A line needs at least two points.
# $id (text) its name
crosses_itself = { $id } crosses itself: give its corners in order.
# $id (text) its name
every_mark_lies_far_side = Every mark lies on the far side of { $id }, which nobody may cross: turn its `keep` to the other hand, looking from its first point to its last.
site_has_faces_names_no = The site has faces and names no competent person. Add competent = ["…"] with the name or initials under which that person joins.
buried_lines_are_drawn_but = Buried lines are drawn, but no locate ticket. Add [[ticket]] with its dates and the ground it covers.
a_pile_has_a_foot = A pile has a foot: give how far it is across.
a_clearance_cant_be_negative = A clearance can't be negative.
line_overhead_hangs_above_ground = A line overhead hangs above the ground: give its lowest height over it.
a_clearance_lies_above_zero = A clearance lies above zero.
voltage_number_kilovolts_not_below = A voltage is a number of kilovolts, not below zero.
over_1_000_kv_line = Over 1,000 kV the line's owner says how far to stay away: give the clearance.
nobody_has_said_its_voltage = Nobody has said its voltage: everything stays 50 ft away until the line's owner does. If the owner says only that it carries no more than 350 kV, give kilovolts_at_most = 350: then 20 ft.
its_voltage_more_than_what = Its voltage is more than what is said to be the most. Ask the line's owner, and give one of the two.
# $why (text) the reason, as it was said or found
ground_over_toe_not_known = The ground over the toe is not known: { $why }
# $elevation (text) the elevation
# $ground (text) how far over the ground
toe_stands_over_ground = The toe at { $elevation } stands { $ground } over the ground: a face has no negative height. Look at both.
layers_go_up_from_bottom = Layers go up from the bottom, and only the uppermost has no top.
# $zone (text) the face's name
# $id (text) its name
names_mark_which_not_this = { $zone } names the mark “{ $id }”, which is not on this site.
# $zone (text) the face's name
# $target (text) the target's name
names_target_which_not_this_2 = { $zone } names the target “{ $target }”, which is not on this site.
pipe_crown_stands_above_its = The pipe's crown stands above its invert: give more than zero.
# $from (text) from where
# $to (text) to where or to whom
holds_from_which_before = It holds from { $from } to { $to }, which is before. Look at both.
its_days_are_dates_such = Its days are dates such as from = "2030-05-01", to = "2030-05-28".
ground_ticket_covers_has_three = The ground that a ticket covers has three corners or more.
ground_ticket_covers_crosses_itself = The ground that the ticket covers crosses itself. Give its corners in order.
# $id (text) its name
# $far (text) how far away
lies_from_the_site_corner = { $id } lies { $far } from the site's corner: that looks like the plan's own number. Take the plan's origin off first; survey feet and digits are lost otherwise.
# $target (text) the target's name
# $dig_to (text) the elevation to dig to
# $mark (text) the mark's name
# $far (text) how far away
dug_from_nearest_benchmark = { $target } is dug to { $dig_to } at { $mark }, { $far } from the nearest benchmark. Look for a slipped decimal, another unit or another datum.
# $machine (text) the machine's name
# $id (text) its name
works_which_not_this_site = { $machine } works on “{ $id }”, which is not on this site.
# $other (text) the other one's name
# $machine (text) the machine's name
have_same_shape_screens = { $other } and { $machine } have the same shape on the screens.
# $machine (text) the machine's name
# $dump (text) how high it empties its bucket
# $side (text) which side
empties_its_bucket_at = { $machine } empties its bucket at { $dump }: that is less than a foot over a truck's side of { $side }.
reach_ground_tail_radius_track = Reach at ground, tail radius and track width must all be given, above zero.
reach_ground_shorter_than_tail = The reach at ground is shorter than the tail radius. Were they swapped?
a_reach_above_60_ft = A reach above 60 ft: was it typed in another unit?
depth_heights_bucket_widths_lie = Depth, heights and bucket widths lie above zero and not above 60 ft: was one typed in another unit?
# $machine (text) the machine's name
# $bucket (text) how wide its bucket is
# $target (text) the target's name
# $width (text) how wide
narrowest_bucket_is_wide = { $machine }’s narrowest bucket is { $bucket } wide; { $target } is { $width }.
# $machine (text) the machine's name
# $digs (text) how deep it digs
# $mark (text) the mark's name
# $depth (text) how deep
digs_deep = { $machine } digs { $digs } deep; { $mark } is { $depth } below the ground.
# $doubt (text) how sure: plus or minus
a_doubt_of = A doubt of { $doubt }: give one standard deviation, from 0 to 1 ft.
# $length (text) how long
the_rod_is_long = The rod is { $length } long: give its length above zero, and its joints on it.
# $good (text) the limit of a good check
# $warn (text) the limit of a check to repeat
check_good_within_warned_within = A check is good within { $good } and warned of within { $warn }: both lie from zero up, the warning beyond the good.
a_closure_cant_be_negative = A closure can't be negative.
truck_side_stands_above_ground = A truck's side stands above the ground: give its height above zero.
heights_widths_forms_lie_above = Heights and widths of forms lie above zero, a filler from zero up.
list-benchmarks = benchmarks
list-lines = lines
list-targets = targets
list-marks = marks
list-machines = machines
list-rods = rods
list-lasers = lasers
list-faces = faces
list-structures = structures
list-utilities = utilities
list-tickets = tickets
list-overheads = overheads
list-piles = piles
# $mark (text) the mark's name
# $what (text) what is meant, in this language
at_mark = { $mark }: { $what }
