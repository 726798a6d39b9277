### What opening a day is refused for. Portuguese, read by no native speaker.

day_named_by_its_date = Um dia se chama pela data, como 2030-05-14.
close_this_day_first = Primeiro feche este dia; depois abra o seguinte.
