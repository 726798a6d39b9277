### What is wrong with layout: lines, strings, tapes, ties, marks, widths, steps.

# $corners (text) how many corners
no_cross-too_few_corners = A line needs at least two corners; this one has { $corners }. Give its ends.
# $number (text) its number
# $next (text) the number of the next corner
no_cross-corner_twice = Corners { $number } and { $next } of the line are one place. Take one of them out.
# $a_to_c (text) the diagonal A–C
# $b_to_d (text) the diagonal B–D
# $base (text) the side A–B
# $across (text) the side B–C
square-impossible = Diagonals of { $a_to_c } and { $b_to_d } do not belong to sides of { $base } and { $across }. Tape sides and diagonals again.
# $slope (text) out for one up
tape-no_tape = The tape reads { $slope }. Give what it reads along the slope, more than 0.
# $slope (text) out for one up
# $rise (text) the rise
tape-too_steep = The tape reads { $slope }, but its ends are { $rise } apart in height: no tape hangs like that. Check both figures and their units.
# $least (text) the least that is allowed
# $strict (text) how far the strict edge lies from the line
width-rule = The least width is { $least }, with the strict edge { $strict } from the line. Give a width above 0 and an edge from 0 up.
# $length (text) how long
string-no_length = The string is { $length } long. Give the distance between the boards, more than 0.
# $along (text) how far along
# $length (text) how long
string-not_under = { $along } along is not under the string, which is { $length } long. Measure from the first board.
# $by (text) by how much, or by whom
# $higher (text) `true` when it is higher, `false` when lower
# $allowed (text) how much is allowed
string-not_level = The second board stands { $by } { $higher ->
        [true] higher
       *[false] lower
    } than the first; { $allowed } is allowed for a level string. Shoot both boards again and move one.
# $by (text) by how much, or by whom
string-above_string = The dig lies { $by } above the string. Check the elevation of the boards and the target.
step_window-no_forms = No form widths are given. Put in the widths that the form crew has.
# $width (text) how wide
step_window-width = A form of { $width } is no form. Give widths above 0 and a filler of 0 or more.
# $drawn (text) where it is drawn
step_window-drawn = The step is drawn { $drawn } from the corner where the forms start. Give more than 0, and at most 1,000 ft.
step_window-too_many = These widths make more lengths than can be looked through. Give fewer widths, or a nearer corner.
# $allowed (text) how much is allowed
# $drawn (text) where it is drawn
# $nearest (text) the nearest length there is
step_window-none_near = The forms make no length within { $allowed } of { $drawn }: the nearest is { $nearest }. Ask the form crew before digging.
marks-old_paint = Old paint is no place to measure from: the machine has moved it. Measure from a hub, a string or control.
marks-scraped = That mark was scraped and not laid again. Lay it first, or measure from a hub, a string or control.
# $depth (text) how many marks away it is already
# $deepest (text) the most
marks-too_deep = That mark is already { $depth } marks away from control, hub or string; { $deepest } is the most. Measure from a hub, a string or control.
# $by (text) by how much, or by whom
# $allowed (text) how much is allowed
marks-differs = The second measure differs by { $by }; { $allowed } is allowed here. Measure both again, from another hub.
marks-doubt = A doubt must be a number of feet at or above 0, such as 0.02.
stake-on_the_mark = The hub stands on its mark, where the bucket goes. Set it off to one side and give the distance.
# $station (text) the station
stake-before_start = Station { $station } lies before the start of the line. Give a station from 0 up.
# $distance (text) how far
tie-no_tape = A tape of { $distance } is no tie. Measure from the known place to the mark, more than 0.
tie-one_base = Both tapes are held at one place. Hold the second at another hub.
# $by (text) by how much, or by whom
tie-too_short = The tapes do not meet: together they are { $by } too short. Check both figures and which hubs they were held at.
# $by (text) by how much, or by whom
tie-too_long = The tapes do not meet: one is { $by } too long for the other. Check both figures and which hubs they were held at.
# $paces (text) how many paces
# $of (text) of how many, or of whom
tie-paces = { $paces } of { $of } paces do not lie between the marks. Count the paces to the place, then to the second mark.
no_cross-what-tape = tape
no_cross-what-string = string
no_cross-what-line = line
no_cross-what-factor = factor k
# $what (text) what is meant, in this language
no_cross-doubt = The doubt of the { $what } must be a number of feet at or above 0, such as 0.02.
square-what-base = The base A–B
square-what-side = The side B–C
square-what-diagonal_ac = The diagonal A–C
square-what-diagonal_bd = The diagonal B–D
# $what (text) what is meant, in this language
# $length (text) how long
square-not_taped = { $what } is { $length }. Tape it and give more than 0.
