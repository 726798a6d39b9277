word = LINE
# $amount (text) amount
left = LINE { $amount }
crossed = STOP – LINE CROSSED
touched = LINE TOUCHED
warning-crossed = LINE CROSSED
warning-touched = TOUCHED
# $feet (text) feet
# $doubt (text) doubt
inside = { $feet } inside ± { $doubt }
# $feet (text) feet
# $doubt (text) doubt
over = { $feet } over ± { $doubt }
