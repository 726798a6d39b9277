### What a sloped laser is refused for. Portuguese, read by no native speaker.

sloped_laser_height_depends_where = A altura de um laser inclinado depende de onde ele está. Diga perto de qual marca.
sloped_laser_proven_by_three = Um laser inclinado é comprovado por três RNs cujos lugares são conhecidos. Acrescente-as, ou ponha o laser em nível.
nobody_has_said_where_is = Ninguém disse onde está { $id }: a altura de um laser inclinado ali não é conhecida. Leia outra RN.
is_sloped = { $set_up } está inclinada: isso é para um laser em nível. Comprove-a em RNs que não fiquem em linha com ela.
