### Why a text is no reading of a rod.

# $text (text) as it was typed
negative = “{ $text }” is below the foot of the rod. Type it without the minus; if the ground is above the laser, set the laser up higher.
# $text (text) as it was typed
# $rod (text) the rod's name
# $length (text) how long
above_top = “{ $text }” is above the top of rod { $rod }, which is { $length } long. Check the decimal point and which rod it is.
# $text (text) as it was typed
# $inches (text) inches and eighths
inches_past_twelve = “{ $text }” has { $inches } inches: after the feet come less than 12. Check the feet, then the inches.
# $rod (text) the rod's name
how-hundredths = Rod { $rod } is marked in feet and hundredths: type it like 5.42.
# $rod (text) the rod's name
how-eighths = Rod { $rod } is marked in feet, inches and eighths: type it like 7-10 3/8.
# $rod (text) the rod's name
how-metres = Rod { $rod } is marked in metres: type it like 1.234.
# $how (text) how it is done
empty = No reading was typed. { $how }
# $text (text) as it was typed
# $rod (text) the rod's name
# $how (text) how it is done
not_a_reading = “{ $text }” is not a reading of rod { $rod }. { $how }
