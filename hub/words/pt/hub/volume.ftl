### Why there is no volume. Portuguese, read by no native speaker.

uneven_rows = A linha { $row } da malha tem { $has } cantos, a primeira tem { $first }. Dê o mesmo em cada linha; deixe vazio onde ninguém mediu.
no_cells = A malha não tem célula com quatro cantos conhecidos. Leia os cantos que faltam.
not_in_order = A seção { $number } não fica depois da anterior. Dê as seções em ordem.
one_section = Uma seção não faz volume. Dê também a próxima.
apart = As duas superfícies não ficam uma sobre a outra. Confira que as duas estão no sistema da obra.
what-cells_length = comprimento da célula
what-cells_width = largura da célula
what-strips_length = comprimento da faixa
what-strips_width = largura da faixa
not_above = Medida “{ $what }”: deve ser maior que 0. Confira.
