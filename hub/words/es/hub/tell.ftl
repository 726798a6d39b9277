### Entries of the log as sentences.

site_taken_from_its_file = Obra «{ $site }» tomada de su archivo.
site_file_differs_places = El archivo de obra difiere en { $differences } puntos; espera al supervisor.
changed_site_file_force_changes = El archivo de obra cambiado ya vale ({ $differences } cambios).
aim_on = Puntería { $aim } en { $on }: { $why }
revision_of_seen_in = Revisión { $revision } de { $target } vista en { $machine }.
the_site_is_changed = La obra cambió. { $put }. Toca { $touched } marcas: { $why }
target_now_revision_marks_touched = La rasante { $target } es ahora la revisión { $revision }, toca { $marks } marcas: { $why }
typed_a_second_time = { $target } escrita por segunda vez: coincide.
typed_a_second_time_2 = { $target } escrita por segunda vez: difiere. { $what }.
put = Puesto: { $names }
retired = Quitado: { $names }
