### What a line of levels is refused for. Portuguese, read by no native speaker.

line_ends_not = O nivelamento termina em { $point }, não em { $to }. Leia { $to } por último: um nivelamento que não fecha em nada não comprova nada.
there_benchmark_already_or_has = Já existe uma RN “{ $id }”, ou ela não tem nome. Dê um nome próprio.
what_benchmark_looks_like_where = como é a RN e onde está
