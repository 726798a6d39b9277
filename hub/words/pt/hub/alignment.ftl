### What is wrong with an alignment or a station on it. Portuguese, read by no native speaker.

not_a_station = “{ $text }” não é uma estaca. Escreva as centenas de pés, um mais e dois algarismos, como 12+34.56.
no_pieces = O eixo não tem nenhum trecho. Dê pelo menos uma reta ou um arco.
no_length = O trecho { $number } do eixo termina onde começa. Tire-o, ou dê seu fim.
radius_differs = O trecho { $number } do eixo é um arco com raio de { $at_start } no início e { $at_end } no fim. Confira o centro e o fim.
past_end = O lugar fica { $by } além do { $before ->
        [true] início
       *[false] fim
    } do eixo, que vai de { $from } a { $to }. Escolha um lugar ao lado dele, ou peça que o desenhem mais longo.
at_centre = O lugar é o centro de um arco: não pertence a uma só estaca. Escolha um lugar mais perto da linha.
past_centre = Um afastamento de { $offset } passa do centro do arco, cujo raio é { $radius }. Dê um afastamento menor, ou o outro lado.
