### What a signature under a day is refused for.

close_the_day_first = Primero cierre el día; después fírmelo.
has_signed_this_day = { $name } ya firmó este día. Lo que falte decir es una enmienda.
