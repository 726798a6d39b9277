### office().keys
### English, the reference: keys of the keyboard on the office's pages, and the panel that lists them.

help = KEYS
title = Keys of the keyboard
single = Single letters act
singleNote = Taken off, letters do nothing; Enter, Esc and the arrows still act.
search = search
up = the line before
down = the line after
open = open the line
shut = close the entry
all = take off the filter
these = these keys
before = the moment before
next = the next moment
mark = jump to a mark
play = play and pause
earlier = a quarter of a second earlier
later = a quarter of a second later
