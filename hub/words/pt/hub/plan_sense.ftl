### What is odd in a plan. Portuguese, read by no native speaker.

point_east_north_elevation_stands = O ponto em leste { $x }, norte { $y }, cota { $elevation }, fica mais íngreme que 1 para 1 de todos os vizinhos. Foi digitado errado?
ft_off_line_from = { $here } está a { $off } ft da linha de { $before } a { $after }. É para haver um degrau ali?
dig_lies_above_existing_ground = { $mark }: a cota a cavar fica { $by } acima do terreno existente. Isso é aterro, não corte: é isso mesmo?
no_two_found_pins_stand = Não há dois marcos achados afastados: nada mostra que o sistema está certo.
between_pins_site_measures_plan = Entre os marcos a obra mede { $scale } do projeto, mais de um em 5000 de diferença.
pins_fit_if_plan_were = Os marcos combinam se o projeto estivesse em metros. Nada foi mudado.
pins_fit_if_site_had = Os marcos combinam se a obra tivesse sido medida em metros. Nada foi mudado.
pin_stands_off_where_others = O marco { $pin } está a { $by } de onde os outros o põem.
pins_lie_turned_by_frame = Os marcos estão girados { $turned }° em relação ao sistema. Confira `turn`.
ground_ft_off_would_grade = { $id }: um terreno a { $ft } pés de diferença estaria na cota. Se são polegadas, escreva { $meant }.
taken_off_twice_ft_ft = { $id }: “{ $said }” é tirado duas vezes, { $one } pés e { $two } pés: a cota a cavar fica { $both } pés abaixo da superfície por isso. Embaixo de um tubo, `bedding` e `wall` já são camadas: tire uma das duas, ou dê nomes diferentes.
ft_thick_dig_lies_so = { $id }: “{ $said }” tem { $thick } pés de espessura, e a cota a cavar fica isso mais funda. Se são polegadas, escreva { $meant }.
the_undercut_goes_ft_deeper = { $id }: a sobrescavação “{ $said }” desce mais { $deep } pés. Se são polegadas, escreva { $meant }.
the_step_at_is_high = O degrau em { $at } tem { $by } de altura: não é um número inteiro de fôrmas de { $height }.
the_step_at = O degrau em { $at }: { $error }
from_pipe_falls_less_than = De { $from } a { $to } o tubo cai { $fall } %, menos de { $least } %.
profile_goes_from_line_from = O perfil vai de { $a } a { $b }, a linha de { $c } a { $d }: o que um dos dois deixa de fora não tem greide.
and_end_apart = { $one_id } e { $other_id } terminam a { $apart } um do outro: devem se encontrar?
where_meet_their_dig_tos = Onde { $one_id } e { $other_id } se encontram, as cotas a cavar diferem { $by }. É para haver um degrau ali?
cross_with_between_them = Em { $at }, { $a } e { $b } se cruzam com { $clear } entre eles; o usual é { $clearance }.
