### An edge against a line that must not be crossed.

word = LINE
# $amount (text) how much, in words or figures
left = LINE { $amount }
crossed = STOP – LINE CROSSED
touched = LINE TOUCHED
warning-crossed = LINE CROSSED
warning-touched = TOUCHED
# $feet (text) feet
# $doubt (text) the doubt that was taken off
inside = { $feet } inside ± { $doubt }
# $feet (text) feet
# $doubt (text) the doubt that was taken off
over = { $feet } over ± { $doubt }
