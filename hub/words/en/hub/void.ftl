### Why something does not count any more.

# $by (text) by how much, or by whom
moved = the ground moved { $by }
# $target (text) the target's name
revised = { $target } was revised there
# $set_up (text) the laser set-up as people read it: SETUP-1
laser = { $set_up } had moved
rain = it rained on it
water = it stood in water
# $zone (text) the face's name
slough = { $zone } came down beside it
