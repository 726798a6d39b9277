### A rectangle by its diagonals. Portuguese, read by no native speaker.

say_which_rectangle_taped_up = Diga qual retângulo foi medido, em até 80 letras.
c_and_d_move_toward = C e D se movem { $by } para { $corner }
no_corner_moves = nenhum canto se move
