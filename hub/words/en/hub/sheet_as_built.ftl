### The sheet of the marks as built.

final_differences = Final differences
not_proven = Not proven
as_built = As built
nobody_has_read_a_mark = Nobody has read a mark.
spot_elevations = Spot elevations
mark = mark
dig_to_ft = #dig to, ft
got_ft = #got, ft
difference = #difference
doubt = #doubt ±
at = at
by = by
laser = laser
shots = #shots
standing = *standing
none = None.
histogram_of_final_differences = Histogram of final differences
low = LOW
high_feet = HIGH, feet
run = run
length_ft = #length, ft
readings = #readings
not_proven_ft = #not proven, ft
stations = stations
