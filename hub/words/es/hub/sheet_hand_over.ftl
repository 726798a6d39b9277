### The sheet for the hand-over.

no_run_has_marks_or = Ninguna zanja tiene marcas ni lecturas todavía.
hand_over = Entrega
under_it = , debajo:{ " " }
width = . Ancho{ " " }
allowed_high = . Se permite alto{ " " }
low = , hondo{ " " }
step_faces = Caras de escalón
hubs_outside_of_the_dig = Estacas fuera de la excavación
nobody_said_from_which_hubs = Nadie dijo de qué estacas se pusieron sus marcas.
station = #estación
mark = marca
dig_to_ft = #cavar a, ft
got_ft = #quedó, ft
difference = #diferencia
standing = *cómo está
trim_first = #raspar antes
paint = pintura
not_read = sin leer
laid = puesta
checked = comprobada
gone = BORRADA
station_of_the_face = #estación de la cara
may_be_off_ft = #puede variar, ft
dig_to_before_ft = #cavar antes a, ft
dig_to_after_ft = #cavar después a, ft
