### What is wrong with a surface. Portuguese, read by no native speaker.

no_triangles = A superfície não tem triângulo. Dê pelo menos três pontos que não fiquem em uma só linha.
too_wide = A superfície abrange { $span }, mas só até 100,000 ft se calcula exato. Confira a unidade e os pontos distantes.
two_elevations = Em leste { $east }, norte { $north } a superfície tem duas cotas, { $one } e { $other }. Tire uma, ou mova o pé de uma face vertical 0.01 ft para fora.
no_such_point = O ponto número { $number } é nomeado, mas há { $points } pontos, contados de 0. Confira a lista.
lines_cross = Uma linha de leste { $east }, norte { $north } a leste { $to_east }, norte { $to_north } cruza outra. Dê às duas um ponto onde se encontram.
too_few_corners = Um contorno ou furo tem { $corners } cantos. Dê pelo menos três, em ordem.
ring_crosses = Um contorno ou furo se cruza. Dê seus cantos em ordem, andando em volta.
no_area = O triângulo { $number }, contado de 0, não tem área. Deixe-o de fora.
overlap = Há triângulos um sobre o outro ao longo da linha de leste { $east }, norte { $north } a leste { $to_east }, norte { $to_north }. Peça que exportem a superfície de novo.
tangled = As bordas da superfície ficam tão perto uma sobre a outra que ela não pode ser conferida. Peça que exportem de novo, sem lascas.
outside = O lugar fica a { $by } da borda da superfície, fora dela ou em um furo. Aqui não há greide. Escolha um lugar na superfície.
