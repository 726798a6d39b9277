### What a drawn signature is refused for.

type_name_whoever_signs_up = Escriba el nombre de quien firma, hasta 60 letras.
that_drawing_is_too_long = El dibujo es muy largo. Bórrelo y firme otra vez, con menos trazos.
nothing_was_drawn = No se dibujó nada. Firme con el dedo en el cuadro.
