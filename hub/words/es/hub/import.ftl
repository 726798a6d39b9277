### What a file would give.

a_surface_of_triangles = Una superficie de { $triangles } triángulos.
as_the_file_says = como dice el archivo
as_the_site_says = como dice la obra; el archivo no lo dice
points_them_with_elevation = { $all } puntos, { $high } de ellos con cota.
counted_in = Contado en { $unit }, { $said }.
the_plan_counts_in = El plano cuenta en { $plan }: cada coordenada se convirtió.
the_surface = La superficie «{ $name }».
brought_site_by_site_frame = Llevado a la obra por el marco de la obra.
breaklines = líneas de quiebre
outer_edge = contorno
holes = huecos
feet = pies
us_survey_feet = pies de topografía (EE. UU.)
metres = metros
points_off_lot_would_lie = { $explains } de { $one } puntos fuera del lote quedarían dentro si { $slip }.
file_plan_name_different_feet = El archivo y el plano nombran pies distintos. Todos quedarían hasta { $apart } ft en otra parte si { $slip }.
pins_site_knows_lie_up = { $explains } de { $one } puntos que la obra conoce quedan hasta { $apart } ft fuera, y quedarían donde se hallaron si { $slip }.
nothing_was_changed = { $would } No se cambió nada: pregunte a quien hizo el archivo.
east_north_were_each_other = este y norte estuvieran cambiados
they_were_metres = fueran metros
they_were_feet = fueran pies
point_had_slipped_they_were = el punto se hubiera corrido y fueran diez veces más grandes
point_had_slipped_they_were_2 = el punto se hubiera corrido y fueran diez veces más chicos
they_counted_other_foot = contaran en el otro pie
counted = { $count } { $what }.
