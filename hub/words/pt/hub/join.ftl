### What joining is refused for. Portuguese, read by no native speaker.

type_your_name_or_initials = Digite seu nome ou iniciais.
that_name_is_too_long = Esse nome é longo demais. Bastam as iniciais.
log_calls_laptop_hub = O registro chama o notebook de “hub”. Digite seu próprio nome ou iniciais.
pick_what_you_do_this = Escolha o que você faz nesta obra.
pick_machine_this_phone_sits = Escolha a máquina em que este celular fica.
truck = caminhonete
