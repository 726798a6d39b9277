### What an inspection is refused for.

what_inspected_who_asked = what is to be inspected, and who is asked
what_inspected_by_whom_what = what was inspected, by whom, what was shown and what was found
what_the_inspector_said = what the inspector said
what_may_go_what_waits = what may go on and what waits
that_inspection_is_signed = That inspection is signed. What is to be said now is a note.
# $inspector (text) who inspected
made_this_inspection_signs = { $inspector } made this inspection and signs it.
