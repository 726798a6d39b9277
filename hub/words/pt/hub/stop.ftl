### What a stop is refused for. Portuguese, read by no native speaker.

what_you_have_seen_before = o que você viu antes de levantar o PARE
pressed_stop_after_what_this = { $by } apertou PARE depois do que esta página mostrava.
