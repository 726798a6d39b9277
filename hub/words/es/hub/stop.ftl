### What a stop is refused for.

what_you_have_seen_before = qué vio antes de levantar el PARE
pressed_stop_after_what_this = { $by } apretó PARE después de lo que mostraba esta página.
