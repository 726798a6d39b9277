### How people read the names that the hub gives.

# $number (text) its number
set_up = SETUP-{ $number }
# $number (text) its number
patch = PATCH-{ $number }
