### What is looked at before a day begins. Portuguese, read by no native speaker.

hat_and_vest = capacete e colete
hand_signals = sinais
first_aid = primeiros socorros
overhead_lines = linhas aéreas
locate_tickets = protocolos de localização
laser_and_rods = laser e miras
ladders_and_barricades = escadas e barreiras
stop = PARE
lower = ABAIXE
raise = LEVANTE
swing = GIRE
travel = ANDE
so_much = TANTO
grade = NA COTA
those_words_cant_stand_for = Essas palavras não servem para hoje. Diga o que você viu.
name_signals_were_agreed = Diga quais sinais foram combinados. PARE é um deles.
say_what_you_saw = Diga o que você viu: só um visto não diz nada amanhã.
not_ready = Não pronto: { $names } sem valor. Diga o que foi visto, ou por que o dia começa sem isso.
