### Words that came after what they answer had changed.

machine_told_something_newer = A la máquina se le dijo algo más nuevo.
look_again = { $what } Mire, y dígalo otra vez si sigue siendo así.
