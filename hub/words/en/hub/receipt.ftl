### What an answer to a call is refused for.

number_not_cab_screen_now = That number is not on the cab's screen now: something graver stands there. GOT IT counts once the number has been seen.
