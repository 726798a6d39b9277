### What is wrong with an alignment or a station on it.

# $text (text) as it was typed
not_a_station = “{ $text }” is not a station. Write hundreds of feet, a plus and two digits, such as 12+34.56.
no_pieces = The alignment has no piece. Give at least one line or arc.
# $number (text) its number
no_length = Piece { $number } of the alignment ends where it starts. Leave it out, or give its end.
# $number (text) its number
# $at_start (text) the radius at its start
# $at_end (text) the radius at its end
radius_differs = Piece { $number } of the alignment is an arc whose radius is { $at_start } at its start and { $at_end } at its end. Check its centre and its end.
# $by (text) by how much, or by whom
# $before (text) what comes before; `true` when it lies before the start
# $from (text) from where
# $to (text) to where or to whom
past_end = The place is { $by } past the { $before ->
        [true] start
       *[false] end
    } of the alignment, which goes from { $from } to { $to }. Pick a place beside it, or have it drawn longer.
at_centre = The place is the centre of an arc: it belongs to no one station. Pick a place nearer the line.
# $offset (text) how far beside it
# $radius (text) the radius
past_centre = An offset of { $offset } reaches past the centre of the arc, whose radius is { $radius }. Give a smaller offset, or the other side.
