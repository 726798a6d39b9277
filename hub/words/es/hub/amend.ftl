### What an amendment is refused for.

what_read_with_entry = qué debe leerse junto con ese asiento
the_log_has_no_entry = El registro no tiene el asiento { $entry }.
that_day_is_not_signed = Ese día no está firmado. Escriba una nota; la enmienda va bajo un día firmado.
