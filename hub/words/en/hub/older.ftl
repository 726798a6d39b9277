### Open things as older hubs would have said them.

# $mark (text) the mark's name
test_void = test of { $mark } is void
# $mark (text) the mark's name
test_failed = test of { $mark } failed
# $patch (text) the gravel patch as people read it: PATCH-1
# $mark (text) the mark's name
patch_at = patch { $patch } at { $mark }
# $mark (text) the mark's name
undercut_at = undercut at { $mark }
# $zone (text) the face's name
watch_face = watch face { $zone }
# $machine (text) the machine's name
is_stopped = { $machine } is stopped
# $mark (text) the mark's name
shoot_again = shoot { $mark } again
# $set_up (text) the laser set-up as people read it: SETUP-1
is_not_proven = { $set_up } is not proven
# $what (text) what is meant, in this language
inspection = inspection: { $what }
# $person (text) the person's name or initials
photo_on_phone = photo on { $person }'s phone
