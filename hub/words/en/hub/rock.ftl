### What a rock point is refused for.

# $mark (text) the mark's name
has_no_reading_take_rock = { $mark } has no reading to take the rock's top from. Shoot it, or type its elevation.
