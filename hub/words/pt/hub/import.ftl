### What a file would give. Portuguese, read by no native speaker.

a_surface_of_triangles = Uma superfície de { $triangles } triângulos.
as_the_file_says = como diz o arquivo
as_the_site_says = como diz a obra; o arquivo não diz
points_them_with_elevation = { $all } pontos, { $high } deles com cota.
counted_in = Contado em { $unit }, { $said }.
the_plan_counts_in = O projeto conta em { $plan }: cada coordenada foi convertida.
the_surface = A superfície “{ $name }”.
brought_site_by_site_frame = Trazido para a obra pelo sistema da obra.
breaklines = linhas de quebra
outer_edge = contorno
holes = furos
feet = pés
us_survey_feet = pés topográficos dos EUA
metres = metros
points_off_lot_would_lie = { $explains } de { $one } pontos fora do lote ficariam dentro se { $slip }.
file_plan_name_different_feet = O arquivo e o projeto nomeiam pés diferentes. Tudo ficaria até { $apart } ft em outro lugar se { $slip }.
pins_site_knows_lie_up = { $explains } de { $one } marcos que a obra conhece ficam até { $apart } ft fora, e ficariam onde foram achados se { $slip }.
nothing_was_changed = { $would } Nada foi mudado: pergunte a quem fez o arquivo.
east_north_were_each_other = leste e norte estivessem trocados
they_were_metres = fossem metros
they_were_feet = fossem pés
point_had_slipped_they_were = o ponto tivesse corrido e fossem dez vezes maiores
point_had_slipped_they_were_2 = o ponto tivesse corrido e fossem dez vezes menores
they_counted_other_foot = contassem no outro pé
counted = { $count } { $what }.
