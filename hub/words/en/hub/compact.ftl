### What ramming is refused for.

# $name (text) its name
is_not_filled_yet = { $name } is not filled yet. Say that it is filled, then ram it.
