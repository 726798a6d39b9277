### Readings, questions and rulings as sentences.

high_by_rule = HIGH BY RULE
high = HIGH
on = ON
low = LOW
too_close_call_high_side = too close to call, high side
too_close_call_low_side = too close to call, low side
# $by (text) by how much, or by whom
from_paper_read_by = { " " }FROM PAPER, read by { $by },
had_waited_without_link_sent = { " " }that had waited without a link and was sent on its reader's word,
no_target_there = no target there
no_machine_assigned = no machine assigned
laser_in_doubt = laser in doubt
set_up_taken_down = set-up taken down
everybody_had_get_away_from = everybody had to get away from the face
face_would_come_daylight_over = the face would come to daylight over a line
no_ticket_covers_it = no ticket covers it
ticket_does_not_hold_today = the ticket does not hold today
line_struck_near = a line was struck near it
buried_line_paint_gone = a buried line's paint is gone
a_query_is_not_answered = a query is not answered
crosses_buried_line_too_near = it crosses a buried line too near
# $what (text) what is meant, in this language
spot_elevation_no_call = { " " }Spot elevation, no call: { $what }.
# $reading (text) the reading
# $paper (text) where it comes from, with a comma before it; empty when it was typed on the spot
# $what (text) what is meant, in this language
# $why (text) the reason, as it was said or found
reading_at = Reading { $reading }{ $paper } at { $what }.{ $why }
does_not_fit_what_known = it does not fit what is known of the mark
far_from_the_target = far from the target
mark_assigned_another_machine = the mark is assigned to another machine
two_shots_disagree = two shots disagree
# $reading (text) the reading
# $mark (text) the mark's name
# $what (text) what is meant, in this language
asked_before_showing_at = ASKED before showing { $reading } at { $mark }: { $what }.
# $by (text) by how much, or by whom
has_a_newer_one = { $by } has a newer one
# $seconds (text) how many seconds
s_old = { $seconds } s old
# $mark (text) the mark's name
machine_told_about_after_made = the machine was told about { $mark } after it was made
day_closed_before_came = the day was closed before it came
# $what (text) what is meant, in this language
# $why (text) the reason, as it was said or found
late_not_shown = LATE, not shown: { $what }; { $why }.
# $text (text) as it was typed
# $mark (text) the mark's name
wrong_number = WRONG NUMBER: the reading { $text } at { $mark } counts no more.
# $words (text) what somebody wrote
not_sent_thrown_away_phone = Not sent, thrown away on the phone: { $words }
leave_it = leave it
leave_it_patch_with_gravel = leave it, patch with gravel
trim_it = trim it
# $mark (text) the mark's name
# $what (text) what is meant, in this language
# $why (text) the reason, as it was said or found
ruling_on = Ruling on { $mark }: { $what }. { $why }
# $doubt (text) how sure: plus or minus
taped_from_the_mark = , taped from the mark, ±{ $doubt }
# $place (text) where it was taped
# $line (text) the line: its name, or what a call says
# $what (text) what is meant, in this language
# $taped (text) what was taped and what the screen shows, in this language
edge_at_to = Edge at { $place } to { $line }{ $what }: { $taped }.
