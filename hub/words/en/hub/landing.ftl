# $has (text) has
# $fewest (text) fewest
too_few = { $has } finish passes are too few to say where to aim: { $fewest } are needed. Go on as drawn.
# $sd (text) sd
no_room = The tolerance leaves no room for a scatter of { $sd } ft. Aim at the target, and read more often.
