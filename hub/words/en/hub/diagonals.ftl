### A rectangle by its diagonals.

say_which_rectangle_taped_up = Say which rectangle was taped, in up to 80 letters.
# $by (text) by how much, or by whom
# $corner (text) the corner toward which they move
c_and_d_move_toward = C and D move { $by } toward { $corner }
no_corner_moves = no corner moves
