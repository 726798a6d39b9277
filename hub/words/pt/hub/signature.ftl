### What a drawn signature is refused for. Portuguese, read by no native speaker.

type_name_whoever_signs_up = Digite o nome de quem assina, até 60 letras.
that_drawing_is_too_long = Esse desenho é longo demais. Apague e assine de novo, com menos traços.
nothing_was_drawn = Nada foi desenhado. Assine com o dedo no quadro.
