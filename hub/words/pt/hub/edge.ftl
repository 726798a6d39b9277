### What a tape to an edge is refused for. Portuguese, read by no native speaker.

cant_tape_from_line_edge = “{ $typed }” não pode ser a trena da linha à borda. Digite sem sinal, até 50 ft, e diga se a borda passa da linha.
