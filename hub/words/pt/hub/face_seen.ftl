### What is refused of something seen at a face. Portuguese, read by no native speaker.

of = “{ $plain }”: { $error }
is_below_zero = “{ $plain }” é menor que zero. Dê zero ou mais.
