### What opening a day is refused for.

day_named_by_its_date = A day is named by its date, such as 2030-05-14.
close_this_day_first = Close this day first; then open the next.
