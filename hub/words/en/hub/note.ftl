### What a note is refused for.

what_the_note_says = what the note says
# $entry (text) the number of the entry
the_log_has_no_entry = The log has no entry { $entry }.
