### What is wrong with a target. Portuguese, read by no native speaker.

past_end = A estaca { $station } fica { $by } além do { $before ->
        [true] início
       *[false] fim
    }: o trecho vai de 0 a { $length }. Escolha uma marca no trecho, ou peça que o desenhem mais longo.
outside_boundary = O lugar fica { $by } fora do contorno do greide. Escolha uma marca dentro dele, ou peça que revisem o contorno.
no_surface = O greide não diz de que é sua cota. Nomeie a superfície, como topo da sapata.
layer_unnamed = A camada { $number } de cima não tem nome. Dê um nome, como brita.
layer_thickness = A camada “{ $name }” tem { $thickness }: uma camada tem mais de 0 e no máximo 5 ft. Confira a unidade e o ponto decimal.
no_direction = O início do trecho e o ponto para onde vai são o mesmo. Dê outro ponto mais adiante.
no_length = O trecho mede { $length }. Dê seu comprimento da estaca 0 até o fim, acima de zero.
no_width = As larguras do trecho são { $left } à esquerda e { $right } à direita. Dê as duas de zero ou mais, uma delas acima.
no_steps = O trecho não tem cota. Dê pelo menos a que vale da estaca 0 em diante.
first_step = A primeira cota é dada da estaca { $from } em diante. Dê a que vale da estaca 0.
step_order = O degrau na estaca { $station } não fica depois do anterior. Dê os degraus no sentido das estacas, cada um uma vez.
step_past_end = O degrau na estaca { $station } fica além do fim do trecho em { $length }. Confira a estaca e o comprimento.
step_window = O degrau na estaca { $station } tem uma folga menor que zero. Dê quanto, para cada lado, sua face pode deslocar.
too_few_corners = O contorno tem { $corners } cantos. Dê pelo menos três, em ordem, ou nenhum.
boundary_crosses = O contorno se cruza. Dê seus cantos em ordem, andando em volta.
no_such_surface = Não há “{ $name }” neste greide. Tem: { $known }.
contour_band = A folga da curva de nível é { $band }. Dê quanto a caminhada pode sair do nível, acima de zero e no máximo 0.5 ft.
no_stations = Este greide não tem estacas. Dê o lugar por uma marca, por duas amarrações ou por passos.
beside_run = O lugar fica { $by } além da borda { $side ->
        [left] esquerda
       *[right] direita
    } do trecho. Escolha uma marca no trecho, ou peça que revisem sua largura.
too_steep = O plano sobe { $rise } ft por pé para { $side ->
        [east] leste
        [north] norte
       *[outlet] a saída
    }. Escreva 2 % como 0.02; mais de 1 é um talude, não um greide.
undercut-no_name = A sobrescavação “{ $name }” não tem nome. Dê um.
undercut-no_material = A sobrescavação “{ $name }” não diz com que é reenchida. Nomeie o material.
undercut-depth = A sobrescavação “{ $name }” deve ter mais de 0 e no máximo 10 ft de fundura. Confira a unidade e o ponto decimal.
