### Why there is no advice on the aim.

# $has (text) how many there are
# $fewest (text) how many are needed
too_few = { $has } finish passes are too few to say where to aim: { $fewest } are needed. Go on as drawn.
# $sd (text) the scatter in feet
no_room = The tolerance leaves no room for a scatter of { $sd } ft. Aim at the target, and read more often.
