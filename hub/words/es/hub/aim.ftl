### What the aim is refused for.

which_marks_or_targets_aim = para cuáles marcas o rasantes es la puntería
why_the_aim_is_set = por qué se pone la puntería
new_day_has_begun_since = Desde entonces empezó otro día: las punterías del día anterior ya no valen.
was_changed_since = { $id } cambió desde entonces: ahora vale r{ $revision }.
somebody_has_set_aim_since = Alguien puso después la puntería de { $on } en { $aim }.
