### What the close of a day is refused for.

why_day_closed_without = why the day is closed without it
