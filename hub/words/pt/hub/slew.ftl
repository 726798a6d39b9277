### The sides on which machines keep out, and what is refused of them. Portuguese, read by no native speaker.

north = norte
north_east = nordeste
east = leste
south_east = sudeste
south = sul
south_west = sudoeste
west = oeste
north_west = noroeste
takes_two_machines_somebody_has = São precisas duas máquinas, e alguém tem que dizer onde cada uma está.
not_proposed_any_more = Isso não está mais proposto. Olhe a tela.
