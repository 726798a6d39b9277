### Why a line of levels does not close. Portuguese, read by no native speaker.

empty = O nivelamento não tem estações. Dê pelo menos uma visada de ré e uma de vante.
too_far = O nivelamento não fecha por { $misclosure }; são permitidos { $allowed }. Nivele de novo: nada foi ajustado.
distances = As distâncias devem subir de mais de 0 até o comprimento todo do nivelamento, { $total }. Dê a distância de cada ponto desde o início.
