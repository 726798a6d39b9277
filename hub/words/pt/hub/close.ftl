### What the close of a day is refused for. Portuguese, read by no native speaker.

why_day_closed_without = por que o dia é fechado sem isso
