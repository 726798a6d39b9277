### What is wrong with a two-peg test.

# $distance (text) how far
equal_sights = Both pegs are { $distance } away: equal sights hide the slant. Stand near one of the pegs and read both again.
# $a (text) the first one
# $b (text) the second one
nearly_equal_sights = The pegs are { $a } and { $b } away: sights so nearly alike show reading errors and not the slant. Stand near one of the pegs, so that the nearer sight is at most four fifths of the farther.
# $distance (text) how far
negative = A distance to a peg is { $distance }. Give both distances, at or above zero.
# $distance (text) how far
no_distance = The distance is { $distance }. Give the distance from the laser to the rod, above zero.
