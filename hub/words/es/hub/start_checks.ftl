### What is looked at before a day begins.

hat_and_vest = casco y chaleco
hand_signals = señas
first_aid = primeros auxilios
overhead_lines = líneas aéreas
locate_tickets = boletos de localización
laser_and_rods = láser y estadales
ladders_and_barricades = escaleras y barreras
stop = PARE
lower = DESCIENDA
raise = LEVANTE
swing = GIRE
travel = AVANCE
so_much = TANTO
grade = A NIVEL
those_words_cant_stand_for = Esas palabras ya no sirven para hoy. Diga qué vio.
name_signals_were_agreed = Diga qué señas se acordaron. PARE es una de ellas.
say_what_you_saw = Diga qué vio: una palomita sola no dice nada mañana.
not_ready = No está listo: falta { $names }. Diga qué se vio, o por qué se empieza sin eso.
