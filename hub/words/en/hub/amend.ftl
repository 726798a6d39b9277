### What an amendment is refused for.

what_read_with_entry = what is to be read with the entry
# $entry (text) the number of the entry
the_log_has_no_entry = The log has no entry { $entry }.
that_day_is_not_signed = That day is not signed. Write a note on it; an amendment stands under a signed day.
