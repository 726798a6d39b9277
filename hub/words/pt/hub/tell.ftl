### Entries of the log as sentences. Portuguese, read by no native speaker.

site_taken_from_its_file = Obra “{ $site }” tomada de seu arquivo.
site_file_differs_places = O arquivo da obra difere em { $differences } lugares; espera um supervisor.
changed_site_file_force_changes = O arquivo da obra mudado está em vigor ({ $differences } mudanças).
aim_on = Pontaria { $aim } em { $on }: { $why }
revision_of_seen_in = Revisão { $revision } de { $target } vista em { $machine }.
the_site_is_changed = A obra mudou. { $put }. { $touched } marcas tocadas: { $why }
target_now_revision_marks_touched = O greide { $target } é agora a revisão { $revision }, { $marks } marcas tocadas: { $why }
typed_a_second_time = { $target } digitado uma segunda vez: concorda.
typed_a_second_time_2 = { $target } digitado uma segunda vez: difere. { $what }.
put = Posto: { $names }
retired = Retirado: { $names }
