### Open things as older hubs would have said them.

test_void = la prueba de { $mark } no vale
test_failed = la prueba de { $mark } no pasó
patch_at = parche { $patch } en { $mark }
undercut_at = sobreexcavación en { $mark }
watch_face = vigilar el talud { $zone }
is_stopped = { $machine } está parada
shoot_again = leer { $mark } otra vez
is_not_proven = { $set_up } no está comprobada
inspection = inspección: { $what }
photo_on_phone = foto en el teléfono de { $person }
