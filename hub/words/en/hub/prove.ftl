### The values of a target, typed a second time.

# $surface (text) the surface's name
elevation_of = elevation of { $surface }
# $surface (text) the surface's name
# $station (text) the station
elevation_of_at = elevation of { $surface } at { $station }
# $number (text) its number
elevation_of_plane = elevation of plane { $number }
# $station (text) the station
step_minus_when_goes_down = step at { $station }, minus when it goes down
# $layer (text) the layer's name
thickness_of = thickness of { $layer }
# $id (text) its name
# $revision (text) the number of the revision
is_at_revision_now = { $id } is at revision { $revision } now. Type its new values.
# $id (text) its name
# $person (text) the person's name or initials
was_typed_by_before = { $id } was typed by { $person } before. Somebody else must type it, without seeing it.
# $id (text) its name
# $first (text) the first one
# $values (text) how many were typed
has_values_were_typed = { $id } has { $first } values, { $values } were typed. Type each of them.
# $what (text) what is meant, in this language
# $error (text) what is wrong, in this language
of = { $what }: { $error }
