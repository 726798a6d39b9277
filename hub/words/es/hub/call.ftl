### The words of a call, as the cab shows them.

word-down = BAJE
word-shave = RASPE
word-grade = A NIVEL
word-up = SUBA
word-wait = ESPERE
too_deep = MUY HONDO – NO RELLENE
quick-more = MÁS
quick-a_little = UN POCO
quick-there = AHÍ
quick-too_deep = SE VE MUY HONDO
quick-come_to_me = VENGA ACÁ
quick-look_here = MIRE AQUÍ
by_eye = A OJO
unit-tenths = DÉCIMAS
unit-feet = PIES
unit-inches = PULG
unit-millimetres = MM
feet_and_inches = { $feet ->
        [one] { $feet } PIE
       *[other] { $feet } PIES
    } { $inches }
