### What joining is refused for.

type_your_name_or_initials = Escriba su nombre o iniciales.
that_name_is_too_long = Ese nombre es muy largo. Bastan las iniciales.
log_calls_laptop_hub = El registro llama «hub» a la computadora. Escriba su nombre o iniciales.
pick_what_you_do_this = Escoja qué hace en esta obra.
pick_machine_this_phone_sits = Escoja en qué máquina va este teléfono.
truck = camioneta
