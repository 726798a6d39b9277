### The sheet of hand signals.

stop_at_once = STOP AT ONCE
both_arms_out_sides_palms = Both arms out to the sides, palms down, swung back and forth. From anybody.
hand_signals = Hand signals
agreed_today = Agreed today:{ " " }
not_agreed_today = NOT AGREED TODAY. Show each other every signal before the first bucket, then say it at the start checks. Who, with whom, when: ______________________
agreed_today_2 = ☑ agreed today
not_agreed_today_2 = ☐ not agreed today
one_arm_out_side_palm = One arm out to the side, palm down, swung back and forth.
arm_and_forefinger_point_down = Arm and forefinger point down; the hand makes small circles.
upper_arm_out_forearm_forefinger = Upper arm out, forearm and forefinger straight up; the hand makes small circles.
arm_straight_out = Arm straight out; the forefinger points to the side to swing to.
arm_straight_out_fingers_up = Arm straight out, fingers up; the hand pushes the way to travel.
one_flat_hand_over_other = One flat hand over the other: as far apart as there is still to dig. (Common practice.)
closed_fist_held_up_still = A closed fist, held up and still: on grade, stop digging here. (Common practice; differs between crews.)
one_person_signals = One person signals. Everybody may give STOP, and every STOP is obeyed, whoever gives it.
you_do_not_see_signaller = You do not see the signaller, or you do not understand: stand still, bucket down.
signal_not_agreed_not_signal = A signal that was not agreed on is not a signal: stand still and ask.
stand_where_cab_sees_you = Stand where the cab sees you, out of the swing, never behind the house. Eyes first, then hands.
drawn_after_29_cfr_1926 = Drawn after 29 CFR 1926 Subpart CC, Appendix A (cranes), except where common practice is said. Your own code, the operator and the crew's agreement come first.
