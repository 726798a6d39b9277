### The sheet of the marks as built. Portuguese, read by no native speaker.

final_differences = Diferenças finais
not_proven = Não comprovado
as_built = Como ficou
nobody_has_read_a_mark = Ninguém leu uma marca.
spot_elevations = Cotas avulsas
mark = marca
dig_to_ft = #cavar até, ft
got_ft = #ficou, ft
difference = #diferença
doubt = #dúvida ±
at = hora
by = quem
laser = laser
shots = #leituras
standing = *situação
none = Nenhuma.
histogram_of_final_differences = Histograma de diferenças finais
low = FUNDO
high_feet = ALTO, pés
run = trecho
length_ft = #comprimento, ft
readings = #leituras
not_proven_ft = #não comprovado, ft
stations = estacas
