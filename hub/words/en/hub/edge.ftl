### What a tape to an edge is refused for.

# $typed (text) as it was typed
cant_tape_from_line_edge = “{ $typed }” can't be a tape from the line to the edge. Type it without a sign, up to 50 ft, and say whether the edge is over the line.
