### How a mark stands as it is built.

spot_elevation = spot elevation
high_by_rule = HIGH BY RULE
on = ON
high = HIGH
low = LOW
too_close_call_high_side = too close to call, HIGH side
too_close_call_low_side = too close to call, LOW side
typed_in_from_paper = typed in from paper
left_by_ruling = left by ruling
patch_by_ruling = patch by ruling
trim_by_ruling = trim by ruling
soil_test_failed = SOIL TEST FAILED: test again
# $patch (text) the gravel patch as people read it: PATCH-1
gravel = gravel { $patch }
# $moved (text) how far from grade it would be
same_if_laser_had_moved = the same if the laser had moved ({ $moved })
measured_before_its_target_changed = measured before its target changed: shoot it again
in_doubt = IN DOUBT: shoot it again
settles_an_earlier_doubt = settles an earlier doubt
# $what (text) what is meant, in this language
void = VOID, { $what }: shoot it again
