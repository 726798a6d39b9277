### What is wrong with a two-peg test. Portuguese, read by no native speaker.

equal_sights = Os dois piquetes estão a { $distance }: visadas iguais escondem a inclinação. Fique perto de um dos piquetes e leia os dois de novo.
nearly_equal_sights = Os piquetes estão a { $a } e { $b }: visadas tão parecidas mostram erros de leitura e não a inclinação. Fique perto de um dos piquetes, de modo que a visada mais curta seja no máximo quatro quintos da mais longa.
negative = A distância até um piquete é { $distance }. Dê as duas distâncias, de zero ou mais.
no_distance = A distância é { $distance }. Dê a distância do laser à mira, acima de zero.
