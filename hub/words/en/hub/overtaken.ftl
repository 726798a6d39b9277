### Words that came after what they answer had changed.

machine_told_something_newer = The machine was told something newer.
# $what (text) what is meant, in this language
look_again = { $what } Look, and say it again if it still holds.
