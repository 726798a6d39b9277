### A rectangle by its diagonals.

say_which_rectangle_taped_up = Diga cuál rectángulo se midió, en 80 letras a lo más.
c_and_d_move_toward = C y D se mueven { $by } hacia { $corner }
no_corner_moves = no se mueve ninguna esquina
