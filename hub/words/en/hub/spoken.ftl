### What a voice says for a call.

number-zero = zero
number-one = one
number-two = two
number-three = three
number-four = four
number-five = five
number-six = six
number-seven = seven
number-eight = eight
number-nine = nine
number-ten = ten
number-eleven = eleven
number-twelve = twelve
eighths-one = an eighth
eighths-two = a quarter
eighths-three = three eighths
eighths-five = five eighths
eighths-six = three quarters
eighths-seven = seven eighths
of_tenths-one = one
of_tenths-two = two
of_tenths-half = a half
of_inches-one = one
of_inches-two = two
of_inches-half = a half
grade = on grade
wait = wait
# $word (text) the call's word
# $amount (text) how much, in words or figures
called = { $word } { $amount }
# $word (text) the call's word
# $amount (text) how much, in words or figures
too_deep = { $word } { $amount }, too deep, don't fill
no_hundredth = less than one hundredth of a foot
no_eighth = less than an eighth of an inch
no_millimetre = less than one millimetre
# $inches (text) inches and eighths in words
inches = { $inches } inches
# $inches (text) inches and eighths in words
one_foot = one foot { $inches }
# $feet (text) how many feet, in words
# $inches (text) inches and eighths in words
feet = { $feet } feet { $inches }
# $millimetres (text) how many
millimetres = { $millimetres } millimetres
# $whole (text) the whole number in words
# $places (text) the digits behind the point in words
point = { $whole } point { $places } feet
# $whole (text) the whole number in words
# $part (text) the part in words
whole_and_part = { $whole } and { $part }
