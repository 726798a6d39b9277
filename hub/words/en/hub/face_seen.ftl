### What is refused of something seen at a face.

# $plain (text) as it was typed
# $error (text) what is wrong, in this language
of = “{ $plain }”: { $error }
# $plain (text) as it was typed
is_below_zero = “{ $plain }” is below zero. Give zero or more.
