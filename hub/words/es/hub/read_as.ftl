### How people read the names that the hub gives.

set_up = PUESTA-{ $number }
patch = PARCHE-{ $number }
