### What a sloped laser is refused for.

sloped_laser_height_depends_where = La altura de un láser inclinado depende de dónde está. Diga cerca de cuál marca.
sloped_laser_proven_by_three = Un láser inclinado se comprueba con tres bancos de lugar conocido. Agréguelos, o ponga el láser a nivel.
nobody_has_said_where_is = No se sabe dónde está { $id }: no se conoce la altura del láser inclinado ahí. Lea otro banco.
is_sloped = { $set_up } está inclinada: eso es para un láser a nivel. Compruébela con bancos que no queden en línea con ella.
