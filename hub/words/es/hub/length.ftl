### Why a text is no length.

empty = No se escribió ninguna medida. Escriba un número y su unidad, como 98.50 ft.
no_unit = «{ $text }» no tiene unidad. Escriba ft, in, mm o m después del número, como 98.50 ft.
unknown_unit = «{ $text }»: aquí no se conoce la unidad «{ $unit }». Use ft, in, mm, cm o m.
not_a_number = «{ $text }» no se entiende como medida. Escríbala como 98.50 ft, 5 ft 4 3/8 in, 12 mm o 1.2 m.
ambiguous = «{ $text }» puede ser dos medidas. Escriba { $decimal } o { $thousands }.
mixed = «{ $text }»: solo van juntos pies enteros y pulgadas. Escríbala como 5 ft 4 3/8 in, o en una sola unidad.
minus_inside = «{ $text }»: el signo menos va antes de toda la medida, no dentro. Escriba 5 ft 4 in, 5'-4" o -5 ft 4 in.
inches_past_twelve = «{ $text }»: después de los pies van menos de 12 pulgadas. Revise los pies y luego las pulgadas.
fraction = «{ $text }»: la fracción debe ser menor que uno y de 64 partes a lo más, como 3/8.
too_long = { $text } es más largo que cualquier obra: el límite es 100,000,000 ft. Revise la unidad y las cifras.
not_finite = El número no es finito, así que no es una medida. Revise de dónde salió.
