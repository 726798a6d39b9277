### Portuguese, read by no native speaker: the account, for the supervisor. What each variable is stands in the English file.

tab = CONTAS
noPrices = Sem lista de preços: as horas vão sem dinheiro. Ponha os preços da obra.
prices = PREÇOS
pricesTitle = Os preços da própria obra
pricesNote = Nada é adivinhado: o que fica vazio não é contado.
machineHour = { $machine }, a hora com operador
truckHour = Um caminhão, a hora
groundHour = Um ajudante, a hora
truckYards = Um caminhão leva, jardas cúbicas soltas
truckTons = O que um caminhão pode levar em peso, toneladas
loosePcf = { $name } no caminhão, libras por pé cúbico
gravelTon = Brita, a tonelada entregue
gravelPlaced = Brita, o pé cúbico posto e compactado
bearing = Capacidade pedida, lb/ft²
shallow = Um ponto raso custa
shallowRock = Um ponto raso em rocha custa
tooDeep = Um ponto fundo demais custa
save = PÔR
badPrice = Escreva números simples, como 195 ou 2.60.
hours = Horas e esperas
noHours = Nenhuma máquina trabalhou ainda.
hoursNote = Do registro, até sua última linha: escavar é o que ninguém chamou de outra coisa.

doing-digging = escava
doing-look = espera que confiram
doing-stopped = PARE
doing-laser_hold = laser em dúvida
doing-target_hold = greide novo não visto
doing-cant = não pode seguir
doing-truck = espera caminhões
doing-attachment = troca acessório
doing-broken = quebrada
doing-parked = estacionada
doing-other_wait = espera
doing-screen_lost = por sinais
cost = Custo do dia
costOf-machine = { $what } escavando
costOf-waiting = Espera: { $what }
costOf-loads = Cargas: { $what }
costOf-gravel = Brita, { $what } t
costOf-patches = Remendos, { $what } yd³ ao preço já posto
dayCost = O dia
jobCost = A obra até agora
withoutRate = Sem preço para { $machines }: não entra na soma.
noLoads = Nenhuma carga foi contada.
trucksOf =
    { $n ->
        [one] { $n } caminhão
       *[other] { $n } caminhões
    }
looseYards = { $yards } yd³ soltas
tonsOf = { $tons } t
ticketsMissing = { $n } sem tíquete
agrees = tíquetes { $percent } % do contado

limit-brim = cheias até a borda
limit-weight = no peso permitido do caminhão, não cheias
limit-not_weighed = pela borda: o que pode pesar não é contado
measuredIs = medido { $bank } yd³ no corte, { $loose } soltas, { $loads } cargas
countedBy = contado { $percent } % do medido
differs = MAIS DE 10 % DE DIFERENÇA: pergunte
measure = MEDIDO
measureTitle = Terra medida no corte
bankYards = Jardas cúbicas no corte, escavadas até agora
ticket = TÍQUETE
ticketOf = Tíquete de { $material }
ticketNumber = Número do tíquete
ticketYards = Jardas cúbicas nele (pode ficar vazio)
ticketTons = Toneladas nele (pode ficar vazio)
takenBack = retirada
amountOwed = quantidade não dita: seu tíquete a diz
soilLeft = Terra ainda por tirar
soilLeftOf = { $target }: { $cut } yd³ no corte{ $loose }
looseOf = , { $loose } soltas
soilRead = { $read } de { $marks } marcas lidas; as outras não são contadas
gravel = Brita
noGravel = Sem brita na lista de preços.
gravelParts = do projeto { $nominal } + pontos fundos { $low } + remendos { $patches } yd³
mean = Esperado
enough = Basta 9 vezes em 10
gravelLine = { $tons } t · { $loads } { $loads ->
        [one] carga
       *[other] cargas
    } · { $cost }
ordered = Pedidas { $ordered } t, chegaram { $came } t
short = FALTAM { $tons } t: peça mais antes de a pedreira fechar
orderTitle = Pedir brita
orderTons = Toneladas
orderNote = De onde, combinado com quem
landings = Onde ficam as passadas de acabamento
noLandings = Ainda sem passada de acabamento: é a primeira leitura depois de uma ordem de 3½ décimos ou menos.
landsAt = { $mean } ft em média, ± { $sd } ft, { $n } { $n ->
        [one] passada
       *[other] passadas
    }
aimAt = Aponte para { $aim } ft
aimRock = em rocha { $aim } ft
aimSure = com tão poucas passadas fica entre { $from } e { $to } ft
aimSaves = um ponto custa então { $cost }, { $onTarget } no greide
aimNoPrices = Para dizer para onde apontar faltam os preços da brita, de um ponto raso e de um fundo demais.
curve = O que um ponto custa conforme onde a média fica, pés a partir do greide

surfaces-trimmed = em terreno acertado
surfaces-tooth_marked = em terreno com marcas de dentes
surfaces-hard_or_rock = em terreno duro ou rocha
noTests = Ainda sem teste de solo.
replaced = testado de novo desde então
voidTest = ANULAR
voidWhy = Por que não vale mais?
voidMoved = o terreno se moveu { $by } ft
voidRevised = { $target } foi revisado
voidRain = choveu nele
voidWater = ficou debaixo d'água
voidSlough = { $zone } caiu ao lado
voidLaser = { $setUp } tinha se movido
undercutOf = { $mark }: cave { $depth } ft mais fundo, { $cy } yd³ de { $material }
confirmUndercut = PÔR EM VIGOR
undercutWhy = Por palavra de quem?
noPatches = Nenhum remendo é necessário.
liftLine = { $on }, camada { $lift }: { $thick } ft, { $passes } { $passes ->
        [one] passada
       *[other] passadas
    }
thick = MAIS GROSSA DO QUE DEVE
rock = Rocha acima da escavação
noRock = Nenhum ponto de rocha.
rockIs = { $cy } yd³, ± { $doubt } por onde termina
rockPoint = topo { $top } ft em E { $east } N { $north }
exceptions-gravel_short = FALTA BRITA, { $tons } t: peça antes de a pedreira fechar
exceptions-undercut_waits = A sobrescavação em { $mark } espera por você
exceptions-retest_owed = { $mark }: o teste de solo NÃO PASSOU, teste de novo
exceptions-retest_void = { $mark }: o teste de solo NÃO VALE, teste de novo
