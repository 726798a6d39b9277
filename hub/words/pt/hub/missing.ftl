### What is missing before a day can be closed; each goes on a list. Portuguese, read by no native speaker.

people_in = { $people } pode estar dentro em { $machine }: primeiro todos saem
closing_check = uma leitura de fechamento em uma RN com { $set_up }
shoot_again = { $mark } tinha que ser lida de novo
visitor_on_site = { $person } não disse JÁ SAÍ DA OBRA
