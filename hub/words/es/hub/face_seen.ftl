### What is refused of something seen at a face.

of = «{ $plain }»: { $error }
is_below_zero = «{ $plain }» es menos que cero. Dé cero o más.
