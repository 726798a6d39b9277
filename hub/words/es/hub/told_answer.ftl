### The answer to who told a machine to dig.

nobody_told_by_this_log = Según este registro nadie mandó a { $machine } excavar aquí en este tiempo.
told = { $who } dijo a { $machine }: { $call }.
no_call_asked_for_bottom = Ninguna orden pidió un fondo por debajo de { $deepest }.
over_the_line = PASADO de la línea
inside_the_line = dentro de la línea
edge_taped_give_or_take = El borde se midió { $away } { $what } { $line }, más o menos { $guard }.
