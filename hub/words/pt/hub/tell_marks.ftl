### Marks as sentences. Portuguese, read by no native speaker.

laid_from = Postas a partir de { $what }: { $marks }. { $note }
measured_a_second_time_apart = Medidas uma segunda vez, a { $apart }: { $marks }.
paint_gone = Pintura apagada: { $marks }.
ties_of = Amarrações de { $mark }: { $first } de { $first_from }, { $second } de { $second_from }; cruzam-se a { $angle }°, ±{ $doubt }.{ $weak ->
        [true] { " Fracas: tome outro par." }
       *[false] { "" }
    }
by = { $what }, { $base } por { $across }: diagonais { $one } e { $other }, as duas devem medir { $wanted }: { $moves }.
control = controle
hubs = piquetes
a_string = um fio
their_ties = suas amarrações
old_paint = pintura velha
