### Why something can't be done, and what to do instead. Portuguese, read by no native speaker.

no_day = Nenhum dia está aberto. Inicie o servidor de novo, ou peça ao supervisor que abra um.
no_site = Nenhuma obra está carregada. Inicie o servidor com um arquivo da obra.
not_allowed = Este celular não pode fazer isso. Peça { $roles }.
set_up_not_proven = { $set_up } ainda não está comprovada. Leia primeiro uma segunda RN.
set_up_is_closed = { $set_up } já foi desmontada. Escolha a estação que está agora, ou instale de novo.
set_ups_alike = { $set_up } está quase na mesma altura. Desmonte-a primeiro, ou mova esta meio pé: uma leitura não poderia dizer de qual laser é.
second_benchmark_there = Esta obra tem mais de uma RN. Leia { $other } para comprovar a estação.
which_side = { $mark } está a menos de meio pé de um degrau. Diga de que lado está a mira.
mark_scraped = { $mark } não está mais no terreno. Ponha de novo a partir de um piquete, um fio ou do controle primeiro.
same_eyes = { $mark } foi posta pela mesma pessoa. Outra pessoa mede uma segunda vez.
no_line = Esta obra não tem linha que não pode ser cruzada. Acrescente uma ao arquivo da obra com no_cross = true.
which_line = Esta obra tem várias linhas que não podem ser cruzadas. Diga até qual foi medido.
call_not_live = Essa ordem não vale mais. Olhe a tela: pode haver uma mais nova.
nothing_to_rule = { $mark } não espera decisão. Decida sobre marcas que duas leituras deixaram no limite.
nothing_to_trim = { $mark } está no limite do lado FUNDO: não há o que raspar. Deixe, ou remende com brita.
aim_outside = Essa pontaria fica fora da tolerância ({ $low } a { $high }). Aponte para dentro dela, ou revise o greide.
say_why = Diga { $what }: fica no registro.
site_changed_again = A obra mudou de novo desde que foi mostrada. Olhe a diferença mais uma vez, depois confirme.
no_site_change = Nenhum arquivo da obra mudado espera. Não há nada a confirmar.
cab_taken = O celular de { $person } é a tela de { $machine }. Quem está na cabine a passa primeiro (TELA, PASSAR A CABINE), ou um supervisor (AGORA, celulares na equipe); depois aperte ENTRAR de novo.
cab_held = O celular de { $person } é a tela de { $machine }, e ali se mantém CAÇAMBA NO CHÃO, ou alguém pede para entrar ou está dentro. Nenhum outro celular a toma agora. Se esse celular morreu, um supervisor o remove; depois aperte ENTRAR de novo.
say_who = Diga primeiro se você é { $person }.
not_confirmed = { $person } está no arquivo da obra, mas ninguém confirmou ainda que este celular é de { $person }. Um supervisor confirma em outro celular ou no notebook: AGORA, celulares na equipe.
witness_unknown = O celular de uma testemunha já tinha entrado antes de { $person } ir para dentro, ou um supervisor confirmou de quem é. Peça a outra pessoa que olhe, ou que um supervisor confirme este celular: AGORA, celulares na equipe.
not_all_out = { $person } leva { $inside } para dentro. Diga JÁ SAÍ quando todos tiverem saído, e quantos; você disse { $said }.
not_that_question = Essa pergunta era de outra marca. Envie a leitura de novo.
ticket_lapsed = O protocolo { $ticket } vale { $days }, hoje não. Peça outro.
already_in = { $person } já está dentro em { $machine }. Aperte JÁ SAÍ primeiro.
say_out_instead = Você está dentro. Aperte JÁ SAÍ quando tiver saído.
not_asked = Ninguém espera mais essa resposta. Olhe a lista.
not_in = Ninguém está dentro em { $machine } com essa entrada. Olhe a lista.
not_your_visit = Essa entrada é de { $person }. Quem viu { $person } sair diz isso como testemunha.
no_witness = Testemunha é outra pessoa, e não o operador desta máquina. Peça a outra pessoa que olhe.
answer_first = { $person } pede para entrar. Responda primeiro: CAÇAMBA NO CHÃO, ESPERE ou NÃO.
pressed_too_late = Esse aperto chegou tarde demais para contar. Segure de novo.
said_too_late = Você disse isso há { $ms } e só chegou agora. Olhe, e diga de novo se ainda vale.
day_is_closed = O dia está fechado. Ainda aceita notas, testes, consultas e fotos{ $signed ->
        [true] , e emendas sob uma assinatura
       *[false] { "" }
    }; para continuar a cavar, o supervisor abre o dia seguinte.
not_ready_to_close = O dia ainda não pode ser fechado. Falta: { $missing }.
no_such_reading = A leitura a corrigir não está no registro deste dia. Faça uma nova.
thing-mark = marca
thing-target = greide
thing-machine = máquina
thing-benchmark = RN
thing-rod = mira
thing-laser = laser
thing-set_up = estação
thing-phone = celular
thing-turning_point = ponto de mudança
thing-mark_or_target = marca ou greide
thing-line = linha que não pode ser cruzada
thing-load = carga
thing-patch = remendo, marca ou greide
thing-test = teste de solo
thing-undercut = sobrescavação proposta
thing-face = talude
thing-pins = par de pinos
thing-utility = linha enterrada
thing-overhead = linha aérea
thing-pile = monte
thing-ticket = protocolo
thing-near_miss = quase acidente aberto
thing-visitor = visita
thing-inspection = inspeção em espera
thing-query = consulta
thing-photo = foto
role-ground = a alguém em solo
role-operator = ao operador
role-supervisor = ao supervisor
role-visitor = a uma visita
role-hub = ao servidor
role-or = { $one } ou { $other }
operator_of = ao operador de { $machine }
unknown = Não existe “{ $name }” ({ $what }) nesta obra. Escolha na lista.
no_mark_to_tape_from = Diga de qual marca a trena parte.
same_name = { $person } já está aqui, em outro celular. Se é você, diga; se não, use outro nome: { $another }.
same_name_in = { $person } já está aqui, em outro celular, e pode estar DENTRO em { $machine }. Se é você, diga; se não, use outro nome: { $another }.
not_competent = Só a pessoa competente pode fazer isso: { $names }.
nobody_competent = Só a pessoa competente pode fazer isso: o arquivo da obra não nomeia ninguém; acrescente competent = ["…"].
bad_visit = Essa entrada não tem nome válido. Abra a página de novo e peça outra vez.
people_in =
    { $many ->
        [one] Dentro em { $machine }: { $people }. Primeiro todos saem; depois levante o PARE.
       *[other] Dentro em { $machine }: { $people }. Primeiro todos saem; depois levante o PARE.
    }
thing-structure = sapata ou muro
