### What is wrong with a tolerance.

# $value (text) as it was given
# $side (text) which side
negative = The tolerance allows { $value } { $side ->
        [high] high
       *[low] low
    }: write both sides as lengths at or above zero, such as 0.10 ft high and 0.20 ft low.
