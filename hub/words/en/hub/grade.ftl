### What is wrong with a grade.

# $corners (text) how many corners
too_few_corners = The profile has { $corners } points. Give at least two, each with its station and elevation.
# $station (text) the station
corner_order = The profile's point at { $station } does not lie beyond the one before it. Give the points up-station, each once.
# $station (text) the station
# $length (text) how long
curve_does_not_fit = The vertical curve at { $station } is { $length } long and does not fit between its neighbours. Check its length; the first and the last point have none.
# $station (text) the station
step_misplaced = The step at { $station } lies past an end, before the step given ahead of it, or in a vertical curve. Check its station.
# $station (text) the station
# $by (text) by how much, or by whom
# $from (text) from where
# $to (text) to where or to whom
past_end = Station { $station } is { $by } past the profile, which goes from { $from } to { $to }. Pick a place on it, or have it drawn longer.
# $from (text) from where
# $to (text) to where or to whom
# $by (text) by how much, or by whom
uphill = From { $from } to { $to } the pipe rises { $by } the way it should flow. Check the sign of the grade and which end is the outlet.
# $rise (text) the rise
# $slope (text) out for one up
never_daylights = The ground rises { $rise } ft per foot away from the cut, and a face of { $slope } to 1 never meets it. Give a steeper face, or the ground's profile further out.
# $slope (text) out for one up
# $rise (text) the rise
almost_parallel = A face of { $slope } to 1 is almost parallel to ground that rises { $rise } ft in a foot: they do not meet near enough to say where. Give a steeper face, or the ground's profile farther out.
empty_face = The face has no part, or one without rise and run. Give each part's rise and run, from the toe outward.
# $by (text) by how much, or by whom
# $before (text) `true` in front of the toe, `false` behind the crest
# $width (text) how wide
beside_face = The place is { $by } { $before ->
        [true] in front of the toe of
       *[false] behind the crest of
    } the face, which is { $width } wide. Pick a place on the face.
no_plane = The fold has no plane. Give at least one.
what-pipe_wall = pipe wall
what-bedding = bedding
what-outside_diameter = pipe's outside diameter
what-beside_the_pipe = room beside the pipe
what-faces_rise = face's rise
what-faces_run = face's run
what-grounds_rise = ground's rise
what-faces_slope = face's slope
what-planes_rise = plane's rise
what-depth = depth
# $what (text) what is meant, in this language
# $value (text) as it was given
negative_size = The { $what } is { $value }. Give it at or above zero.
# $what (text) what is meant, in this language
# $value (text) as it was given
not_a_number = The { $what } is { $value }. Give a plain number, at or above zero for a face.
