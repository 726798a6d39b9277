### What is wrong with a grade. Portuguese, read by no native speaker.

too_few_corners = O perfil tem { $corners } pontos. Dê pelo menos dois, cada um com sua estaca e cota.
corner_order = O ponto do perfil em { $station } não fica depois do anterior. Dê os pontos no sentido das estacas, cada um uma vez.
curve_does_not_fit = A curva vertical em { $station } mede { $length } e não cabe entre as vizinhas. Confira seu comprimento; o primeiro e o último ponto não têm curva.
step_misplaced = O degrau em { $station } fica além de uma ponta, antes do degrau anterior ou em uma curva vertical. Confira sua estaca.
past_end = A estaca { $station } fica { $by } fora do perfil, que vai de { $from } a { $to }. Escolha um lugar nele, ou peça que o desenhem mais longo.
uphill = De { $from } a { $to } o tubo sobe { $by } no sentido em que deve correr. Confira o sinal da inclinação e qual ponta é a saída.
never_daylights = O terreno sobe { $rise } ft por pé afastando-se do corte, e uma face de { $slope } para 1 nunca o encontra. Dê uma face mais íngreme, ou o perfil do terreno mais para fora.
almost_parallel = Uma face de { $slope } para 1 é quase paralela ao terreno que sobe { $rise } ft por pé: não se encontram perto o bastante para dizer onde. Dê uma face mais íngreme, ou o perfil do terreno mais para fora.
empty_face = A face não tem parte, ou tem uma sem altura nem recuo. Dê a altura e o recuo de cada parte, do pé do talude para fora.
beside_face = O lugar fica { $by } { $before ->
        [true] na frente do pé do talude
       *[false] atrás da crista
    } da face, que tem { $width } de largura. Escolha um lugar na face.
no_plane = A dobra não tem plano. Dê pelo menos um.
what-pipe_wall = parede do tubo
what-bedding = berço
what-outside_diameter = diâmetro externo do tubo
what-beside_the_pipe = espaço ao lado do tubo
what-faces_rise = altura da face
what-faces_run = recuo da face
what-grounds_rise = subida do terreno
what-faces_slope = inclinação da face
what-planes_rise = subida do plano
what-depth = fundura
negative_size = Medida “{ $what }”: { $value }. Dê zero ou mais.
not_a_number = Dado “{ $what }”: { $value }. Dê um número simples, de zero ou mais se for de uma face.
