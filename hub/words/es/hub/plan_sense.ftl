### What is odd in a plan.

point_east_north_elevation_stands = El punto en este { $x }, norte { $y }, cota { $elevation }, queda a más de 1 a 1 de todos sus vecinos. ¿Se escribió mal?
ft_off_line_from = { $here } queda a { $off } ft de la línea de { $before } a { $after }. ¿Hay ahí un escalón?
dig_lies_above_existing_ground = { $mark }: la rasante queda { $by } sobre el terreno. Eso es relleno, no corte: ¿así debe ser?
no_two_found_pins_stand = No hay dos puntos hallados separados: nada prueba que el marco esté bien.
between_pins_site_measures_plan = Entre los puntos, la obra mide { $scale } del plano: más de uno en 5000 de diferencia.
pins_fit_if_plan_were = Los puntos coinciden si el plano estuviera en metros. No se cambió nada.
pins_fit_if_site_had = Los puntos coinciden si la obra se hubiera medido en metros. No se cambió nada.
pin_stands_off_where_others = El punto { $pin } queda a { $by } de donde lo ponen los demás.
pins_lie_turned_by_frame = Los puntos quedan girados { $turned }° respecto al marco. Revise `turn`.
ground_ft_off_would_grade = { $id }: un suelo a { $ft } pies estaría a nivel. Si son pulgadas, escriba { $meant }.
taken_off_twice_ft_ft = { $id }: «{ $said }» se quita dos veces, { $one } pies y { $two } pies: la cota a excavar queda { $both } pies bajo la superficie por ella. Bajo un tubo, `bedding` y `wall` ya son capas: quite una de las dos, o póngales nombres distintos.
ft_thick_dig_lies_so = { $id }: «{ $said }» mide { $thick } pies de grueso, y la cota a excavar queda eso más honda. Si son pulgadas, escriba { $meant }.
the_undercut_goes_ft_deeper = { $id }: la sobreexcavación «{ $said }» baja { $deep } pies más. Si son pulgadas, escriba { $meant }.
the_step_at_is_high = El escalón en { $at } mide { $by }: no es un número entero de cimbras de { $height }.
the_step_at = El escalón en { $at }: { $error }
from_pipe_falls_less_than = De { $from } a { $to } el tubo baja { $fall } %, menos de { $least } %.
profile_goes_from_line_from = El perfil va de { $a } a { $b } y el eje de { $c } a { $d }: lo que uno no cubre no tiene rasante.
and_end_apart = { $one_id } y { $other_id } terminan a { $apart }: ¿deben encontrarse?
where_meet_their_dig_tos = Donde se encuentran { $one_id } y { $other_id }, sus rasantes difieren { $by }. ¿Hay ahí un escalón?
cross_with_between_them = En { $at }, { $a } y { $b } se cruzan con { $clear } entre ellos; lo usual es { $clearance }.
