### How people read the names that the hub gives. Portuguese, read by no native speaker.

set_up = ESTAÇÃO-{ $number }
patch = REMENDO-{ $number }
