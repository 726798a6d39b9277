### Marks as sentences.

laid_from = Puestas desde { $what }: { $marks }. { $note }
measured_a_second_time_apart = Medidas por segunda vez, a { $apart }: { $marks }.
paint_gone = Se borró la pintura: { $marks }.
ties_of = Amarres de { $mark }: { $first } desde { $first_from }, { $second } desde { $second_from }; se cruzan a { $angle }°, ±{ $doubt }.{ $weak ->
        [true] { " Débiles: tome otro par." }
       *[false] { "" }
    }
by = { $what }, { $base } por { $across }: diagonales { $one } y { $other }, las dos deben medir { $wanted }: { $moves }.
control = el control
hubs = estacas
a_string = un hilo
their_ties = sus amarres
old_paint = pintura vieja
