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
eighths-four = a half
eighths-five = five eighths
eighths-six = three quarters
eighths-seven = seven eighths
one_of_them = one
grade = on grade
wait = wait
# $word (text) word
# $amount (text) amount
called = { $word } { $amount }
# $word (text) word
# $amount (text) amount
too_deep = { $word } { $amount }, too deep, don't fill
no_hundredth = less than one hundredth of a foot
no_eighth = less than an eighth of an inch
no_millimetre = less than one millimetre
# $inches (text) inches
inches = { $inches } inches
# $inches (text) inches
one_foot = one foot { $inches }
# $feet (text) feet
# $inches (text) inches
feet = { $feet } feet { $inches }
# $millimetres (text) millimetres
millimetres = { $millimetres } millimetres
# $whole (text) whole
# $places (text) places
point = { $whole } point { $places } feet
# $whole (text) whole
# $part (text) part
whole_and_part = { $whole } and { $part }
