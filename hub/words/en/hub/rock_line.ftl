# $has (text) has
# $fewest (text) fewest
too_few = { $has } rock points make no surface. Shoot at least { $fewest }, not in one line.
