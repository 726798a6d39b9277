### What an inspection is refused for. Portuguese, read by no native speaker.

what_inspected_who_asked = o que se vai inspecionar, e a quem se pede
what_inspected_by_whom_what = o que foi inspecionado, por quem, o que foi mostrado e o que foi achado
what_the_inspector_said = o que o inspetor disse
what_may_go_what_waits = o que pode seguir e o que espera
that_inspection_is_signed = Essa inspeção está assinada. O que falta dizer agora é uma nota.
made_this_inspection_signs = { $inspector } fez esta inspeção e a assina.
