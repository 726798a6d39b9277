### What a signature under a day is refused for.

close_the_day_first = Close the day first; then sign it.
# $name (text) its name
has_signed_this_day = { $name } has signed this day. What is to be said now is an amendment.
