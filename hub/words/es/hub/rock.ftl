### What a rock point is refused for.

has_no_reading_take_rock = { $mark } no tiene lectura de dónde tomar la cara de la roca. Léala o escriba su elevación.
