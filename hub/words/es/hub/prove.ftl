### The values of a target, typed a second time.

elevation_of = cota de { $surface }
elevation_of_at = cota de { $surface } en { $station }
elevation_of_plane = cota del plano { $number }
step_minus_when_goes_down = escalón en { $station }, con menos si baja
thickness_of = espesor de { $layer }
is_at_revision_now = { $id } ya está en la revisión { $revision }. Escriba sus valores nuevos.
was_typed_by_before = { $id } ya lo escribió { $person }. Debe escribirlo otra persona, sin verlo.
has_values_were_typed = { $id } tiene { $first } valores y se escribieron { $values }. Escriba cada uno.
of = { $what }: { $error }
