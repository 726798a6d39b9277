### What a drawn signature is refused for.

type_name_whoever_signs_up = Type the name of whoever signs, up to 60 letters.
that_drawing_is_too_long = That drawing is too long. Wipe it and sign again, with fewer strokes.
nothing_was_drawn = Nothing was drawn. Sign with a finger in the box.
