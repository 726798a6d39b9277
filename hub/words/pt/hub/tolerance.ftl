### What is wrong with a tolerance. Portuguese, read by no native speaker.

negative = A tolerância permite { $value } { $side ->
        [high] alto
       *[low] fundo
    }: escreva os dois lados como medidas de zero ou mais, como 0.10 ft alto e 0.20 ft fundo.
