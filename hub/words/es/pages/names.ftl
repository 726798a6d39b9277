### Spanish: what people read for names that the hub gives. What each variable is stands in the English file.

setUp = PUESTA-{ $number }
patch = PARCHE-{ $number }
