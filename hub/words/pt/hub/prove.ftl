### The values of a target, typed a second time. Portuguese, read by no native speaker.

elevation_of = cota de { $surface }
elevation_of_at = cota de { $surface } em { $station }
elevation_of_plane = cota do plano { $number }
step_minus_when_goes_down = degrau em { $station }, com menos se desce
thickness_of = espessura de { $layer }
is_at_revision_now = { $id } está agora na revisão { $revision }. Digite seus valores novos.
was_typed_by_before = { $id } já foi digitado por { $person }. Outra pessoa deve digitar, sem ver.
has_values_were_typed = { $id } tem { $first } valores, foram digitados { $values }. Digite cada um.
of = { $what }: { $error }
