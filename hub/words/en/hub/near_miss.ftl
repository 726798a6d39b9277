### What a near miss is refused for.

what_happened_what_done_about = what happened, and what was done about it
