### What a file would give.

# $triangles (text) how many triangles
a_surface_of_triangles = A surface of { $triangles } triangles.
as_the_file_says = as the file says
as_the_site_says = as the site says; the file does not
# $all (text) how many, or how much, of all
# $high (text) how high, or the upper limit
points_them_with_elevation = { $all } points, { $high } of them with an elevation.
# $unit (text) the unit
# $said (text) what was said
counted_in = Counted in { $unit }, { $said }.
# $plan (text) what the plan counts in
the_plan_counts_in = The plan counts in { $plan }: each coordinate was converted.
# $name (text) its name
the_surface = The surface “{ $name }”.
brought_site_by_site_frame = Brought on to the site by the site's frame.
breaklines = breaklines
outer_edge = outer edge
holes = holes
feet = feet
us_survey_feet = US survey feet
metres = metres
# $explains (text) how many that would explain
# $one (text) the first one
# $slip (text) what the slip would be
points_off_lot_would_lie = { $explains } of { $one } points off the lot would lie on it if { $slip }.
# $apart (text) how far apart
# $slip (text) what the slip would be
file_plan_name_different_feet = The file and the plan name different feet. All would lie up to { $apart } ft elsewhere if { $slip }.
# $explains (text) how many that would explain
# $one (text) the first one
# $apart (text) how far apart
# $slip (text) what the slip would be
pins_site_knows_lie_up = { $explains } of { $one } pins that the site knows lie up to { $apart } ft off, and would lie where they were found if { $slip }.
# $would (text) what would be so if that had happened
nothing_was_changed = { $would } Nothing was changed: ask who made the file.
east_north_were_each_other = east and north were in each other's place
they_were_metres = they were metres
they_were_feet = they were feet
point_had_slipped_they_were = the point had slipped and they were ten times too large
point_had_slipped_they_were_2 = the point had slipped and they were ten times too small
they_counted_other_foot = they counted in the other foot
# $count (text) how many
# $what (text) what is meant, in this language
counted = { $count } { $what }.
