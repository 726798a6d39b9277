### What is wrong with a tolerance.

negative = La tolerancia permite { $value } { $side ->
        [high] alto
       *[low] hondo
    }: escriba los dos lados como medidas de cero o más, como 0.10 ft alto y 0.20 ft hondo.
