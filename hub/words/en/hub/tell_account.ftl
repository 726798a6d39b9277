### Entries of the account as sentences.

# $load (text) the number of the load
# $ticket (text) the ticket's name
load_has_ticket = Load { $load } has ticket { $ticket }.
# $load (text) the number of the load
load_was_counted_by_mistake = Load { $load } was counted by mistake.
# $material (text) the material
# $bank_cy (text) how many cubic yards
# $how (text) how it is done
cubic_yards_measured_ground = { $material }: { $bank_cy } cubic yards measured in the ground, { $how }.
# $tons (text) how many tons
# $note (text) what somebody noted
gravel_ordered = Gravel ordered: { $tons } tons. { $note }
# $short_tons (text) how many tons are missing
# $ordered_tons (text) how many tons are ordered
gravel_is_short_by_tons = GRAVEL IS SHORT by { $short_tons } tons: { $ordered_tons } are ordered.
price_list_put = The price list was put in.
out = out
in = in
waits_for_trucks = waits for trucks
changes_an_attachment = changes an attachment
is_broken = is broken
is_parked = is parked
waits = waits
# $machine (text) the machine's name
works_again = { $machine } works again.
# $patch (text) the gravel patch as people read it: PATCH-1
# $length (text) how long
# $width (text) how wide
# $depth (text) how deep
# $yards (text) how many cubic yards
# $lifts (text) how many lifts
cubic_yards_gravel_lifts = { $patch }: { $length } × { $width } × { $depth }, { $yards } cubic yards of gravel in { $lifts } lifts.
needed = needed
filled = filled
compacted = compacted
tested = tested
done = done
thicker_than_lift_may = { " " }THICKER THAN A LIFT MAY BE.
# $on (text) on what, or of what
# $lift (text) which lift
# $thick (text) how thick
# $passes (text) how many passes
# $what (text) what is meant, in this language
lift_rammed_passes = { $on }: lift { $lift } rammed, { $thick }, { $passes } passes.{ $what }
# $mark (text) the mark's name
# $depth (text) how deep
# $material (text) the material
undercut_proposed_at = Undercut proposed at { $mark }: { $depth } deeper, filled with { $material }.
# $target (text) the target's name
undercut_force = The undercut of { $target } is in force.
# $point (text) the point's name
# $what (text) what is meant, in this language
# $top (text) the elevation of the top
at = { $point }: { $what } at { $top }.
pass = PASS
fail = FAIL
# $at (text) where
# $tester (text) who tested
# $what (text) what is meant, in this language
# $result (text) how it came out
soil_test_at_by = Soil test at { $at } by { $tester }: { $what }. { $result }.
# $what (text) what is meant, in this language
the_soil_test_is_void = The soil test is VOID: { $what }. Test again.
# $point (text) the point's name
# $top (text) the elevation of the top
rock_at = { $point }: rock at { $top }.
# $yards (text) how many cubic yards
yards_loose = { $yards } cubic yards loose
# $tons (text) how many tons
tons = { $tons } tons
# $trucks (text) how many trucks
# $material (text) the material
# $way (text) in or out, in this language
# $amount (text) how much, in words or figures
counted = { $trucks } × { $material } { $way }: { $amount }.
# $machine (text) the machine's name
# $what (text) what is meant, in this language
machine_waits = { $machine } { $what }.
# $patch (text) the gravel patch as people read it: PATCH-1
# $what (text) what is meant, in this language
patch_step = { $patch }: { $what }.
