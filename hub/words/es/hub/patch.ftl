### What a gravel patch is refused for.

has_no_reading_take_depth = { $mark } no tiene lectura de dónde tomar la profundidad. Léala o escríbala.
is_not_filled_yet = { $name } todavía no está lleno. Llénelo y apisónelo en { $lifts } capas.
has_of_lifts_rammed = { $name } tiene { $lifts } de { $wanted } capas apisonadas. Apunte cada capa; el apisonado y la prueba lo adelantan.
