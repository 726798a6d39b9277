### Why the rules of a cut give no answer.

# $depth (text) how deep
# $limit (text) how deep the tables go
# $section (text) the section of the rules
engineer = The cut is { $depth } deep; beyond { $limit } the tables end ({ $section }). An engineer designs it.
# $class (text) the soil's class: A, B or C
no_bench = The rules draw no bench for class { $class } soil. Slope it, or an engineer designs it.
# $class (text) the soil's class: A, B or C
# $section (text) the section of the rules
cohesive_alone = The rules draw benches in class { $class } for cohesive soil alone ({ $section }). Slope it.
# $number (text) its number
# $is (text) how high it is
# $most (text) the most that is allowed
# $section (text) the section of the rules
bench_too_high = Vertical { $number } is { $is }; at most { $most } ({ $section }). Make it lower.
# $vertical (text) how high the vertical part is
# $class (text) the soil's class: A, B or C
# $depth (text) how deep
no_vertical = No unsupported vertical of { $vertical } in class { $class } soil { $depth } deep. Slope it from the toe, or support it.
# $within (text) within how far
never_daylights = The face never meets the ground within { $within } behind its toe. Give the ground farther out, or a steeper face.
# $why (text) the reason, as it was said or found
no_ground = The ground behind the toe is not known: { $why }
# $corners (text) how many corners
no_toe = A toe needs two corners or more at different places; this one has { $corners }.
toe_crosses = The toe crosses itself. Give its corners in order along the cut.
# $most (text) the most that is allowed
# $every (text) how far apart
too_many_places = The toe has more than { $most } places { $every } apart. Put them farther apart, or give a shorter toe.
piece_order = The pieces of a face go up from the toe, and only the last one has no top. Give them in order.
# $why (text) the reason, as it was said or found
rules = The rules can't be read: { $why }
what-number_of_tapes = number of tapes
what-time_between_tapes = time between tapes
what-tape_between_pins = tape between the pins
what-strength = strength
what-dip = dip, run to one of rise,
what-lines_slope = line's slope
what-weight_or_friction = unit weight or friction
what-faces_angle = face's angle, above the friction and up to 90°,
what-toe_to_crest = height from toe to crest
what-depth = depth
what-height = height
what-benchs_vertical = bench's vertical
what-depth_above_vertical = depth above the vertical
what-vertical = vertical
what-trenchs_length = trench's length
what-places_on_toe = distance between places on the toe
what-faces_slope = face's slope
what-planes_slope = plane's slope
what-length_of_face = length of face
what-length = length
what-depth_back = depth back
what-to_the_footing = distance to the footing
what-cohesion = cohesion
what-unit_weight = unit weight
what-friction = friction
# $what (text) what is meant, in this language
# $value (text) as it was given
negative = The { $what } is { $value }. Give zero or more.
# $what (text) what is meant, in this language
# $value (text) as it was given
not_a_number = The { $what } is { $value }. Give a number of zero or more that a site can have.
