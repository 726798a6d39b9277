### What an answer to a call is refused for.

number_not_cab_screen_now = Ese número no está ahora en la pantalla de la máquina: hay algo más grave ahí. ENTENDIDO cuenta cuando se vio el número.
