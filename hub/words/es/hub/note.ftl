### What a note is refused for.

what_the_note_says = qué dice la nota
the_log_has_no_entry = El registro no tiene el asiento { $entry }.
