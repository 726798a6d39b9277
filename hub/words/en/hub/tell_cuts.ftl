### Faces and what is buried as sentences.

# $zone (text) the face's name
# $class (text) the soil's class: A, B or C
# $seen (text) what was seen
# $by_hand (text) what the hand found
# $release (text) the words with which work goes on
inspected_class = { $zone } inspected, class { $class }: { $seen }. { $by_hand } { $release }
# $zone (text) the face's name
# $from (text) from where
# $to (text) to where or to whom
# $why (text) the reason, as it was said or found
soil_of = Soil of { $zone }: class { $from } is now { $to }: { $why }
# $zone (text) the face's name
# $why (text) the reason, as it was said or found
by_an_engineer_own_design = { $zone } by an engineer's own design: { $why }
# $zone (text) the face's name
# $length (text) how long
# $height (text) how high
# $back (text) how far back
# $cubic_yards (text) how many cubic yards
# $note (text) what somebody noted
came_down = { $zone } came down: { $length } × { $height } × { $back }, about { $cubic_yards } cy. { $note }
# $zone (text) the face's name
# $what (text) what is meant, in this language
get_away_from_the_face = GET AWAY FROM THE FACE { $zone }: { $what }.
# $machine (text) the machine's name
# $zones (text) the faces' names
may_stand_under_face_people = { $machine } may stand under a face that people had to get away from: { $zones }.
# $machine (text) the machine's name
# $zone (text) the face's name
is_away_from = { $machine } is away from { $zone }.
pipe_or_cable_way = A pipe or cable is in the way
a_buried_line_was_struck = A buried line was struck
not_drawn = not drawn
# $ticket (text) the ticket's name
# $to (text) to where or to whom
# $days_left (text) how many days
# $silent (text) how many have not answered
ticket_holds_through_days_more = Ticket { $ticket } holds through { $to }, { $days_left } days more; { $silent } silent.
# $utility (text) the buried line's name
paint_of_is_gone = Paint of { $utility } is gone: have it marked again.
# $utility (text) the buried line's name
is_marked_again = { $utility } is marked again.
# $utility (text) the buried line's name
# $top (text) the elevation of the top
# $outside (text) the outside diameter
# $crossing (text) what crosses it, in this language
bared = { $utility } bared: top { $top }, { $outside } across. { $crossing }
# $held (text) what holds it, in this language
# $why (text) the reason, as it was said or found
let_go_on = Let go on: { $held } Why: { $why }
# $target (text) the target's name
# $marks (text) the marks: names, or how many
owed_before_digging_to = Owed before digging to { $target }: { $marks }.
# $pins (text) the pins: their name, or how many
pins_open_faster = pins { $pins } open faster
it_came_down = it came down
somebody_says_that_it_moves = somebody says that it moves
# $zone (text) the face's name
# $pins (text) the pins: their name, or how many
# $apart (text) how far apart
the_first_tape = { $zone } { $pins }: { $apart }, the first tape.
still = still
watch = WATCH
get_away = GET AWAY
# $zone (text) the face's name
# $pins (text) the pins: their name, or how many
# $apart (text) how far apart
# $opened (text) by how much it opened
# $rate (text) feet in an hour
# $what (text) what is meant, in this language
ft_an_hour = { $zone } { $pins }: { $apart }, { $opened }, { $rate } ft an hour: { $what }.
water = water
a_crack = a crack
rain = rain
vibration = vibration
trimmed_from_the_top_down = trimmed from the top down
# $back (text) how far back
a_load_from_the_crest = a load { $back } from the crest
# $back (text) how far back
move_it_back_to = { " " }Move it back to { $back }.
# $zone (text) the face's name
# $what (text) what is meant, in this language
# $move (text) what to move back; empty or a sentence of its own with a blank before it
# $note (text) what somebody noted
seen_at = Seen at { $zone }: { $what }.{ $move } { $note }
# $zone (text) the face's name
# $high (text) how high, or the upper limit
daylight_of = Daylight of { $zone }: { $high } high, inside every line.
# $zone (text) the face's name
# $crossed (text) the lines, each with how far over
# $high (text) how high, or the upper limit
daylight_of_over_a_line = DAYLIGHT of { $zone } over a line: { $crossed }; { $high } high.
# $zone (text) the face's name
# $clear (text) how much lies between them
# $need (text) how much is needed
crosses = { $zone } crosses with { $clear }, needs { $need }
# $what (text) what is meant, in this language
# $line (text) the line: its name, or what a call says
struck = { $what }: { $line }.
it_rains = It rains.
the_rain_stopped = The rain stopped.
# $place (text) the face, mark or machine where it stood
water_pumped_out_of = Water pumped out of { $place }.
# $what (text) what is meant, in this language
# $faces (text) the faces, by name
to_be_inspected_after_it = { $what } To be inspected after it: { $faces }.
