### What a note is refused for. Portuguese, read by no native speaker.

what_the_note_says = o que a nota diz
the_log_has_no_entry = O registro não tem o lançamento { $entry }.
