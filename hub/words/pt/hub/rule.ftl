### What a ruling is refused for. Portuguese, read by no native speaker.

why_it_is_ruled_so = por que se decide assim
this_mark_read_again_after = Esta marca foi lida de novo depois dessa decisão.
