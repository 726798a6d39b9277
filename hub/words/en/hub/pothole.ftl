### What a pothole is refused for.

where_it_was_bared = where it was bared: a mark, or a place
# $away (text) how far away
# $utility (text) the buried line's name
from_where_marked = That is { $away } from where { $utility } is marked. Which line is it?
give_pipe_outside_with_its = Give the pipe's outside with its unit, such as 2 in or 0.35 ft.
