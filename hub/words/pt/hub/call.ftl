### The words of a call, as the cab shows them. Portuguese, read by no native speaker.

word-down = DESÇA
word-shave = RASPE
word-grade = NA COTA
word-up = SUBA
word-wait = ESPERE
too_deep = FUNDO DEMAIS – NÃO REATERRE
quick-more = MAIS
quick-a_little = UM POUCO
quick-there = AÍ
quick-too_deep = PARECE FUNDO DEMAIS
quick-come_to_me = VENHA A MIM
quick-look_here = OLHE AQUI
by_eye = A OLHO
unit-tenths = DÉCIMOS
unit-feet = PÉS
unit-inches = POL
unit-millimetres = MM
feet_and_inches = { $feet ->
        [one] { $feet } PÉ
       *[other] { $feet } PÉS
    } { $inches }
