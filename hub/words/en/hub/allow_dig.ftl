### What a leave to dig is refused for.

why_dig_goes_whose_word = why the dig goes on, and on whose word
which_mark_dig_goes = at which mark the dig goes on: the leave is for that place alone
