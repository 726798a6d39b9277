### Open things as older hubs would have said them. Portuguese, read by no native speaker.

test_void = o teste de { $mark } não vale
test_failed = o teste de { $mark } não passou
patch_at = remendo { $patch } em { $mark }
undercut_at = sobrescavação em { $mark }
watch_face = vigiar o talude { $zone }
is_stopped = { $machine } está parada
shoot_again = ler { $mark } de novo
is_not_proven = { $set_up } não está comprovada
inspection = inspeção: { $what }
photo_on_phone = foto no celular de { $person }
