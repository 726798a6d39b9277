### What a query is refused for.

what_asked_whom_about_which = what is asked, of whom, and about which marks or targets
answer_who_gave_where_written = the answer, who gave it and where it is written
