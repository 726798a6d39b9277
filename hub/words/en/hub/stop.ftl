### What a stop is refused for.

what_you_have_seen_before = what you have seen before lifting the stop
# $by (text) by how much, or by whom
pressed_stop_after_what_this = { $by } pressed STOP after what this page showed.
