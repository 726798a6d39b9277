### What an inspection is refused for.

what_inspected_who_asked = qué se va a inspeccionar y a quién se le pide
what_inspected_by_whom_what = qué se inspeccionó, quién lo inspeccionó, qué se mostró y qué se halló
what_the_inspector_said = qué dijo el inspector
what_may_go_what_waits = qué puede seguir y qué espera
that_inspection_is_signed = Esa inspección ya está firmada. Lo que falte decir es una nota.
made_this_inspection_signs = { $inspector } hizo esta inspección y la firma.
