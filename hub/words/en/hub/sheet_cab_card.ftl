### The card for the cab.

the_site_names_no_machine = The site names no machine.
cab_card = Cab card
how_a_call_reads = How a call reads
what_the_screen_means = What the screen means
hands = Hands
agreed_today = Agreed today:{ " " }
not_agreed_today = NOT AGREED TODAY: show each other the signals first.{ " " }
they_are_drawn_sheet_hand = They are drawn on the sheet of hand signals. You do not see the signaller: stand still.
reach_on_the_ground = Reach on the ground
tail_from_the_middle = Tail, from the middle
over_the_tracks = Over the tracks
digs_to = Digs to
dumps_at = Dumps at
boom_up_to = Boom up to
buckets = Buckets
the_ground_round_the_machine = The ground round the machine
blind = BLIND
tail = tail{ " " }
nobody_screen_not_nobody_there = Nobody on the screen is not nobody there: LOOK before every move.
blind_side_right_behind_cab = The blind side is right and behind the cab and turns with the house: anywhere in the circle may be on it.
somebody_asks = Somebody asks: bucket on the ground, lever locked, hands off, then hold BUCKET DOWN.
hold_release_only_when_everybody = Hold RELEASE only when everybody named is out and you have looked.
tail_swing_gap_between_house = Tail swing and the gap between house and tracks stay out of bounds with the bucket down too.
dig_three_tenths_foot = dig three tenths of a foot
the_number_is_in_feet = the number is in FEET: one foot two tenths
take_a_thin_slice = take a thin slice
on_grade = on grade: dig no more here
too_deep = too deep: stop here, put nothing back
too_close_to_call = too close to call: another shot comes
on_the_screen = *on the screen
what_to_do = do
stand_still_bucket_down = stand still, bucket down; only a supervisor lifts it
no_number_counts = no number counts; wait for the next call
last_number_too_old = the last number is too old; ask
old_numbers_are_dead = old numbers are dead; press SEEN
no_number_counts_2 = no number counts; watch the ground person: hands
somebody_works_inside_your_circle = somebody works inside your circle: eyes before you move
a_buried_line_is_near = a buried line is near: no bucket
gas_or_not_known = gas or not known: get out of the machine and away from it, everybody away upwind, 911 from far off, then its owner; power: stay in, touch nothing
track_back_out_its_reach = track back out of its reach; the competent person inspects
line_overhead_within_reach = a line overhead is within reach; wait until somebody spots
it_senses_nobody = it senses nobody: look before every move
block_top_corner_neither_fills = the block in the top corner neither fills nor empties
screen_dead_whatever_shows = the screen is dead, whatever it shows: look at hands
screen-stop = STOP
screen-pause_laser_check = PAUSE – LASER CHECK
screen-old_ask = OLD – ASK
screen-new_target = NEW TARGET
screen-no_link = NO LINK
screen-look = LOOK
screen-hand_dig = HAND DIG
screen-line_struck = LINE STRUCK:
screen-get_away_from_the_face = GET AWAY FROM THE FACE
screen-spotter_needed = SPOTTER NEEDED
screen-nobody_has_asked_come_look = NOBODY HAS ASKED TO COME IN – LOOK ANYWAY
keep_out = KEEP-OUT
# $reach (text) feet, with two places
# $more (text) feet, with two places
reach_and_more = Reach { $reach } ft and { $more } ft more, in whole feet up.
# $radius (text) feet, with two places
# $tail (text) feet, with two places
# $more (text) feet, with two places
tail_swing = Tail swing { $radius } ft: tail { $tail } ft and { $more } ft more.
stop_from_anybody = STOP comes from anybody: on the screen, by hand, by shouting. Stand still at once, bucket on the ground. Only a supervisor lifts it.
the_way_in = Somebody wants in
whom_to_call = Whom to call
emergency = Emergency: 911, and say where:
in_charge = In charge here:
competent = Competent person:
line_owners = Whom to call for a line:
not_shown_to_you = Were they not shown to you? Then they are not agreed: stand still and ask.
front = Look and stop
number = The number, and hands
measures_in_feet = Measures in feet:
