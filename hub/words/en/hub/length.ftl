### Why a text is no length.

empty = No length was written. Write a number and its unit, such as 98.50 ft.
# $text (text) as it was typed
no_unit = “{ $text }” has no unit. Write ft, in, mm or m after the number, such as 98.50 ft.
# $text (text) as it was typed
# $unit (text) the unit
unknown_unit = “{ $text }”: the unit “{ $unit }” is not known here. Use ft, in, mm, cm or m.
# $text (text) as it was typed
not_a_number = “{ $text }” can't be read as a length. Write it like 98.50 ft, 5 ft 4 3/8 in, 12 mm or 1.2 m.
# $text (text) as it was typed
# $decimal (text) as a decimal
# $thousands (text) with thousands
ambiguous = “{ $text }” can mean two lengths. Write { $decimal } or { $thousands }.
# $text (text) as it was typed
mixed = “{ $text }”: only whole feet followed by inches go together. Write it like 5 ft 4 3/8 in, or in one unit.
# $text (text) as it was typed
minus_inside = “{ $text }”: a minus stands before the whole length, not inside it. Write 5 ft 4 in, 5'-4" or -5 ft 4 in.
# $text (text) as it was typed
inches_past_twelve = “{ $text }”: after the feet come less than 12 inches. Check the feet, then the inches.
# $text (text) as it was typed
fraction = “{ $text }”: the fraction must be less than one, with 64 parts at most, such as 3/8.
# $text (text) as it was typed
too_long = { $text } is longer than any site: the limit is 100,000,000 ft. Check the unit and the digits.
not_finite = The number is not finite, so it is no length. Check where it was computed.
