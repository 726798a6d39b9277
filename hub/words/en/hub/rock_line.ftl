### Why rock points make no volume.

# $has (text) how many there are
# $fewest (text) how many are needed
too_few = { $has } rock points make no surface. Shoot at least { $fewest }, not in one line.
