### The words of a call, as the cab shows them.

word-down = DOWN
word-shave = SHAVE
word-grade = GRADE
word-up = UP
word-wait = WAIT
too_deep = TOO DEEP – DON'T FILL
quick-more = MORE
quick-a_little = A LITTLE
quick-there = THERE
quick-too_deep = LOOKS TOO DEEP
quick-come_to_me = COME TO ME
quick-look_here = LOOK HERE
by_eye = BY EYE
unit-tenths = TENTHS
unit-feet = FEET
unit-inches = IN
unit-millimetres = MM
# $feet (number) feet
# $inches (text) inches and eighths
feet_and_inches = { $feet ->
        [one] { $feet } FT
       *[other] { $feet } FT
    } { $inches }
