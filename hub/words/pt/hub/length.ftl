### Why a text is no length. Portuguese, read by no native speaker.

empty = Nenhuma medida foi escrita. Escreva um número e sua unidade, como 98.50 ft.
no_unit = “{ $text }” não tem unidade. Escreva ft, in, mm ou m depois do número, como 98.50 ft.
unknown_unit = “{ $text }”: a unidade “{ $unit }” não é conhecida aqui. Use ft, in, mm, cm ou m.
not_a_number = “{ $text }” não se lê como medida. Escreva como 98.50 ft, 5 ft 4 3/8 in, 12 mm ou 1.2 m.
ambiguous = “{ $text }” pode ser duas medidas. Escreva { $decimal } ou { $thousands }.
mixed = “{ $text }”: só pés inteiros seguidos de polegadas vão juntos. Escreva como 5 ft 4 3/8 in, ou em uma só unidade.
minus_inside = “{ $text }”: o menos vem antes da medida toda, não dentro dela. Escreva 5 ft 4 in, 5'-4" ou -5 ft 4 in.
inches_past_twelve = “{ $text }”: depois dos pés vêm menos de 12 polegadas. Confira os pés, depois as polegadas.
fraction = “{ $text }”: a fração deve ser menor que um, com no máximo 64 partes, como 3/8.
too_long = { $text } é mais longo que qualquer obra: o limite é 100,000,000 ft. Confira a unidade e os algarismos.
not_finite = O número não é finito, então não é uma medida. Confira onde foi calculado.
