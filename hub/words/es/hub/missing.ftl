### What is missing before a day can be closed; each goes on a list.

people_in = { $people } puede estar adentro en { $machine }: primero salen todos
closing_check = una lectura de cierre en un banco de nivel con { $set_up }
shoot_again = había que leer { $mark } otra vez
visitor_on_site = { $person } no ha dicho YA SALÍ DE LA OBRA
