### The sheet for the hand-over. Portuguese, read by no native speaker.

no_run_has_marks_or = Nenhum trecho tem marcas ou leituras ainda.
hand_over = Entrega
under_it = , embaixo:{ " " }
width = . Largura{ " " }
allowed_high = . Permitido alto{ " " }
low = , fundo{ " " }
step_faces = Faces dos degraus
hubs_outside_of_the_dig = Piquetes fora da escavação
nobody_said_from_which_hubs = Ninguém disse de quais piquetes suas marcas foram postas.
station = #estaca
mark = marca
dig_to_ft = #cavar até, ft
got_ft = #ficou, ft
difference = #diferença
standing = *situação
trim_first = #raspar primeiro
paint = pintura
not_read = não lida
laid = posta
checked = conferida
gone = APAGADA
station_of_the_face = #estaca da face
may_be_off_ft = #pode variar, ft
dig_to_before_ft = #cavar antes até, ft
dig_to_after_ft = #cavar depois até, ft
