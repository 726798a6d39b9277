### What is wrong with a surface.

no_triangles = The surface has no triangle. Give at least three points that do not lie in one line.
# $span (text) how far it spans
too_wide = The surface spans { $span }, but at most 100,000 ft can be worked exactly. Check the unit and the points far off.
# $east (text) how far east
# $north (text) how far north
# $one (text) the first one
# $other (text) the other one's name
two_elevations = At east { $east }, north { $north } the surface has two elevations, { $one } and { $other }. Remove one, or move the foot of a vertical face out by 0.01 ft.
# $number (text) its number
# $points (text) how many points
no_such_point = Point number { $number } is named, but there are { $points } points, counted from 0. Check the list.
# $east (text) how far east
# $north (text) how far north
# $to_east (text) how far east its end lies
# $to_north (text) how far north its end lies
lines_cross = A line from east { $east }, north { $north } to east { $to_east }, north { $to_north } crosses another. Give both a point where they meet.
# $corners (text) how many corners
too_few_corners = A boundary or hole has { $corners } corners. Give at least three, in order.
ring_crosses = A boundary or hole crosses itself. Give its corners in order, walking around it.
# $number (text) its number
no_area = Triangle { $number }, counted from 0, has no area. Leave it out.
# $east (text) how far east
# $north (text) how far north
# $to_east (text) how far east its end lies
# $to_north (text) how far north its end lies
overlap = Triangles lie over each other along the line from east { $east }, north { $north } to east { $to_east }, north { $to_north }. Have the surface exported again.
tangled = The surface's edges lie so close over each other that it can't be checked. Have it exported again, without slivers.
# $by (text) by how much, or by whom
outside = The place is { $by } off the surface's edge, outside it or in a hole. There is no target here. Pick a place on the surface.
