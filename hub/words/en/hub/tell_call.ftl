### Calls and stops as sentences.

# $call (text) the number of the call
call_is_on_the_phone = Call { $call } is on the phone.
# $call (text) the number of the call
# $b (text) the second one
call_shown = Call { $call } shown: { $b }
# $call (text) the number of the call
call = Call { $call }: GOT IT pressed.
# $call (text) the number of the call
# $who (text) who
call_2 = Call { $call }: { $who } saw the nod.
# $call (text) the number of the call
# $to (text) to where or to whom
# $what (text) what is meant, in this language
call_to_ended = Call { $call } to { $to } ended: { $what }.
# $machine (text) the machine's name
asks_for_a_look = { $machine } asks for a look.
# $machine (text) the machine's name
# $what (text) what is meant, in this language
cant = { $machine } can't: { $what }.
# $machines (text) their names, with commas between
# $why (text) the reason, as it was said or found
stop_lifted_for = Stop lifted for { $machines }: { $why }
newer_call_took_its_place = a newer call took its place
the_mark_is_on_grade = the mark is on grade
too_old = too old
said_for_long_enough = said for long enough
the_laser_is_in_doubt = the laser is in doubt
the_target_changed = the target changed
the_mark_was_laid_again = the mark was laid again
its_reading_was_corrected = its reading was corrected
taken_back = taken back
the_cab_cant = the cab can't
another_phone_took_over = another phone took over
a_ruling_took_its_place = a ruling took its place
everybody_had_get_away_from = everybody had to get away from the face
the_engineer_was_asked = the engineer was asked
the_day_was_closed = the day was closed
something_holds_the_work_there = something holds the work there
the_machine_moved = the machine moved
its_target_given_another_machine = its target was given to another machine
machine_not_site_any_more = the machine is not on the site any more
the_laptop_clock_was_behind = the laptop's clock was behind: nobody knows how old it is
hard_ground = hard ground
water = water
pipe_or_cable = pipe or cable
line = line
face = face
come_and_look = come and look
# $machine (text) the machine's name
# $line (text) the line: its name, or what a call says
sent = { $machine } ← { $line }
# $call (text) the number of the call
# $to (text) to where or to whom
# $mark (text) the mark's name
# $what (text) what is meant, in this language
call_to_ended_at = Call { $call } to { $to } at { $mark } ended: { $what }.
# $machines (text) their names, with commas between
all_stop = ALL STOP ({ $machines })
# $machines (text) their names, with commas between
# $why (text) the reason, as it was said or found
all_stop_why = ALL STOP ({ $machines }): { $why }
# $machines (text) their names, with commas between
stop = STOP ({ $machines })
# $machines (text) their names, with commas between
# $why (text) the reason, as it was said or found
stop_why = STOP ({ $machines }): { $why }
