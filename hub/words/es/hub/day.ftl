### What opening a day is refused for.

day_named_by_its_date = Un día se llama por su fecha, como 2030-05-14.
close_this_day_first = Primero cierre este día; después abra el siguiente.
