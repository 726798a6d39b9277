### Photos on sheets.

promised_by = Promised by{ " " }
not_waited_for_any_more = { " " }and not waited for any more:{ " " }
promised_and_not_delivered = Promised and not delivered: still on the phone of{ " " }
entry = entry{ " " }
with_entry = , with entry{ " " }
not_shown = NOT SHOWN: the file of this photo was touched after it came. Its bytes do not give the hash that the log names.
not_shown_2 = NOT SHOWN: the file of this photo is missing from the data folder.
face = face
photo = photo
printed_smaller = Photos on this sheet may be printed smaller than they came. Each SHA-256 is that of the photo as it came, which is kept with the log: whoever has that file can prove it.
