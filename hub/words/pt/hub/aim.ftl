### What the aim is refused for. Portuguese, read by no native speaker.

which_marks_or_targets_aim = para quais marcas ou greides é a pontaria
why_the_aim_is_set = por que se fixa a pontaria
new_day_has_begun_since = Desde então começou outro dia: as pontarias do dia anterior não valem mais.
was_changed_since = { $id } mudou desde então: agora vale r{ $revision }.
somebody_has_set_aim_since = Alguém fixou desde então a pontaria de { $on } em { $aim }.
