### What the inspection of a face is refused for. Portuguese, read by no native speaker.

what_you_saw = o que você viu: seco ou molhado, trincas, barrigas, cargas na crista
what_your_hand_found = o que a mão achou: polegar, rolinho, penetrômetro
something_seen_this_face_after = Depois dessa inspeção algo foi visto ou dito deste talude, de chuva ou de água bombeada.
people_had_get_away_from = Todos tiveram que se afastar outra vez deste talude depois do que esta página mostrava.
another_day_began = Desde então começou outro dia: cada talude é inspecionado de novo.
