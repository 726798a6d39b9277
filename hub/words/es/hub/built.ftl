### How a mark stands as it is built.

spot_elevation = elevación suelta
high_by_rule = ALTO POR REGLA
on = A NIVEL
high = ALTO
low = HONDO
too_close_call_high_side = muy justo, lado ALTO
too_close_call_low_side = muy justo, lado HONDO
typed_in_from_paper = pasada del papel
left_by_ruling = se deja, por decisión
patch_by_ruling = parche, por decisión
trim_by_ruling = raspar, por decisión
soil_test_failed = FALLÓ LA PRUEBA DE SUELO: pruebe otra vez
gravel = grava: { $patch }
same_if_laser_had_moved = igual si el láser se hubiera movido ({ $moved })
measured_before_its_target_changed = medida antes de que cambiara su rasante: lea otra vez
in_doubt = EN DUDA: lea otra vez
settles_an_earlier_doubt = resuelve una duda anterior
void = NO VALE, { $what }: lea otra vez
