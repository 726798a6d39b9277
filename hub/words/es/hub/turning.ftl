### What a line of levels is refused for.

line_ends_not = La nivelación termina en { $point }, no en { $to }. Lea { $to } al final: si no cierra, no comprueba nada.
there_benchmark_already_or_has = Ya existe un banco «{ $id }» o no tiene nombre. Póngale un nombre propio.
what_benchmark_looks_like_where = cómo es el banco de nivel y dónde está
