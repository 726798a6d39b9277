### What is wrong with a site file or a draft of it.

# $what (text) what is meant, in this language
# $key (text) the key in the site file
has_no = { $what } has no `{ $key }`. Add it.
# $key (text) the key in the site file
must_text_quotes_length_with = `{ $key }` must be text in quotes, a length with its unit: { $key } = "98.50 ft".
# $key (text) the key in the site file
must_be_a_number = `{ $key }` must be a number.
# $key (text) the key in the site file
must_be_text_in_quotes = `{ $key }` must be text in quotes.
# $key (text) the key in the site file
must_be_true_or_false = `{ $key }` must be true or false.
# $key (text) the key in the site file
# $text (text) as it was typed
not_number_within_1_000 = `{ $key }`: “{ $text }” is not a number within 1,000,000,000 either way.
# $key (text) the key in the site file
must_list_brackets = `{ $key }` must be a list in brackets.
# $key (text) the key in the site file
must_point_east_then_north = `{ $key }` must be a point, east then north: ["12.00 ft", "30.00 ft"].
give_mark_either_or_station = Give a mark either `at`, or `station` and `offset`, not both.
a_station_needs_a_target = A station needs a target: say along which run it counts, or give the mark's place.
# $name (text) its name
station_counts_along_which_not = The station counts along “{ $name }”, which is not a target of this site, or has faults of its own.
# $name (text) its name
is_not_a_run = “{ $name }” is not a run: give the mark's place instead of a station.
# $shapes (text) the keys of the shapes
give_target_exactly_one_shape = Give a target exactly one shape: { $shapes }.
# $text (text) as it was typed
steeper_than_one_one = “{ $text }” is steeper than one to one. Write a fall of two feet in a hundred as "-2 %".
# $text (text) as it was typed
is_not_a_rise = “{ $text }” is not a rise. Write "2 %" or "-1.5 %".
run_needs_least_one_step = A run needs at least one step: steps = [{ "{" } from = "0 ft", elevation = "99.50 ft", window = "0 ft" { "}" }].
# $target (text) the target's name
has_no_triangles_to_keep = “{ $target }” has no triangles to keep. Name their file instead: file = "ground.csv".
file_coordinates_are_plan_but = The file's coordinates are the plan's, but the site has no [frame]. Add one, or leave `on_plan` out.
# $file (text) the file's name
# $why (text) the reason, as it was said or found
cant_be_read = “{ $file }” can't be read ({ $why }). It is looked for beside the site file.
# $file (text) the file's name
# $names (text) their names, with commas between
# $several (text) the first one's name
has_several_surfaces = “{ $file }” has several surfaces ({ $names }). Say which this target is: name = "{ $several }".
this_target_has_no_tolerance = This target has no tolerance, and the site has no default. Add tolerance = { "{" } high = "0.10 ft", low = "0.20 ft" { "}" } or a [tolerance] table.
say_which_surface_this_target = Say which surface this target's elevation is of: surface = "top of footing". A bare number could be any of them.
check_good_must_above_zero = `check_good` must be above zero and not above `check_warn`.
height_forms_must_above_zero = `height` of the forms must be above zero.
# $key (text) the key in the site file
must_number_above_zero = `{ $key }` must be a number above zero.
# $name (text) its name
not_there_yet = { $name }: not there yet. Give it.
# $key (text) the key in the site file
# $what (text) what is meant, in this language
at = `{ $key }`: { $what }
# $key (text) the key in the site file
# $why (text) the reason, as it was said or found
not_of_the_list = `{ $key }`: { $why }.
the_site_file = the site file
# $key (text) the key in the site file
this = This { $key }
