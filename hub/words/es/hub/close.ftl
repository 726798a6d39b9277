### What the close of a day is refused for.

why_day_closed_without = por qué se cierra el día sin eso
