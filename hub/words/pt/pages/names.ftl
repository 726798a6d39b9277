### Portuguese, read by no native speaker: what people read for names that the hub gives. What each variable is stands in the English file.

setUp = ESTAÇÃO-{ $number }
patch = REMENDO-{ $number }
