### What a gravel patch is refused for.

# $mark (text) the mark's name
has_no_reading_take_depth = { $mark } has no reading to take the depth from. Shoot it, or type the depth.
# $name (text) its name
# $lifts (text) how many lifts
is_not_filled_yet = { $name } is not filled yet. Fill it, then ram it in { $lifts } lifts.
# $name (text) its name
# $lifts (text) how many lifts
# $wanted (text) how much or how many there should be
has_of_lifts_rammed = { $name } has { $lifts } of { $wanted } lifts rammed. Enter each lift; ramming and tests move it on.
