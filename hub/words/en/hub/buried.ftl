### What is wrong with a buried line.

# $places (text) how many places
too_few_places = A buried line needs two places or more along it; this one has { $places }.
# $top (text) the elevation of the top
# $bottom (text) the elevation of the bottom
upside_down = The top { $top } lies below the bottom { $bottom }. Look which is which.
what-outside_diameter = outside diameter
what-zone = zone beside the line
# $what (text) what is meant, in this language
# $value (text) as it was given
negative = The { $what } is { $value }. Give zero or more.
