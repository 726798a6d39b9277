### The answer to who told a machine to dig. Portuguese, read by no native speaker.

nobody_told_by_this_log = Por este registro ninguém mandou { $machine } cavar aqui nesse tempo.
told = { $who } disse a { $machine }: { $call }.
no_call_asked_for_bottom = Nenhuma ordem pediu um fundo abaixo de { $deepest }.
over_the_line = ALÉM da linha
inside_the_line = dentro da linha
edge_taped_give_or_take = A borda foi medida a { $away } { $what } { $line }, mais ou menos { $guard }.
