### Words that came after what they answer had changed. Portuguese, read by no native speaker.

machine_told_something_newer = Algo mais novo foi dito à máquina.
look_again = { $what } Olhe, e diga de novo se ainda vale.
