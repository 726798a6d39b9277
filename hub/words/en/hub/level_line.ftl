### Why a line of levels does not close.

empty = The line has no set-ups. Give at least one backsight and one foresight.
# $misclosure (text) by how much it does not close
# $allowed (text) how much is allowed
too_far = The line misses by { $misclosure }; { $allowed } is allowed. Level it again: nothing was adjusted.
# $total (text) the whole length
distances = The distances must rise from above 0 to the whole length of the line, { $total }. Give the distance of each point from the start.
