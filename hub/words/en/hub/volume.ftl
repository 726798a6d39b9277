### Why there is no volume.

# $row (text) the number of the row
# $has (text) how many there are
# $first (text) the first one
uneven_rows = Row { $row } of the grid has { $has } corners, the first has { $first }. Give every row as many; write none where nobody measured.
no_cells = The grid has no cell with four known corners. Shoot the missing corners.
# $number (text) its number
not_in_order = Section { $number } does not lie beyond the one before. Give the sections in order.
one_section = One section makes no volume. Give the next one too.
apart = The two surfaces do not lie over each other. Check that both are on the site's frame.
what-cells_length = cell's length
what-cells_width = cell's width
what-strips_length = strip's length
what-strips_width = strip's width
# $what (text) what is meant, in this language
not_above = The { $what } must be above 0. Check it.
