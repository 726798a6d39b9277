# $places (text) places
too_few_places = A buried line needs two places or more along it; this one has { $places }.
# $top (text) top
# $bottom (text) bottom
upside_down = The top { $top } lies below the bottom { $bottom }. Look which is which.
what-outside_diameter = outside diameter
what-zone = zone beside the line
# $what (text) what
# $value (text) value
negative = The { $what } is { $value }. Give zero or more.
