### Portuguese, read by no native speaker: laser set-ups, their proof and their checks. What each variable is stands in the English file.

setUpNew = INSTALAR UM LASER
whichLaser = Qual laser?
whichBenchmark = Qual RN está embaixo da mira?
whichRod = Qual mira?
slopeAs = Os mesmos números que no laser. Três RNs, que não fiquem em linha com ele, o comprovam.
slopedLaser = INCLINADO
slopedNote = Três RNs o comprovam
riseEast = Sobe para leste, % (desce: −)
riseNorth = Sobe para norte, % (desce: −)
goOn = SEGUIR
slopedPlace = A altura de um laser inclinado depende de onde ele está.
sloped = inclinado { $east } leste, { $north } norte
whereStands = Onde está o laser?
rodOnBenchmark = Mira em { $benchmark }
secondOwed = Agora leia uma segunda RN. Antes disso não há ordens.
checkShot = CONFERIR
secondBenchmark = SEGUNDA RN
bumped = BATERAM NELE
takeDown = DESMONTAR
restateSetUp = CORRIGIR A RÉ
levelAgain = NIVELAR DE NOVO

levelSteps-1 = Mira em um ponto firme: leia agora.
levelSteps-2 = Mude a altura do laser um décimo ou mais. Mira na RN.
levelSteps-3 = Mira de novo no mesmo ponto.
useOne = USAR UMA SÓ RN
useOneWhy = Cada ordem vai dizer UMA SÓ RN.
hi = AI

proofs-unproven = Falta a segunda RN
proofs-unproven_slope = Inclinado: faltam mais duas RNs que não fiquem em linha com ele
proofs-unproven_slope_so_far = Inclinado: faltam mais duas RNs que não fiquem em linha com ele. Até agora: { $agreed }
proofs-across_the_slope = Comprovado através da inclinação por duas RNs
proofs-second_benchmark = Comprovado por uma segunda RN
proofs-two_benchmarks = Comprovado de novo por duas RNs
proofs-levelled_again = Nivelado duas vezes em uma RN
proofs-one_benchmark = UMA SÓ RN
doubtCheck = A conferência em { $benchmark } diferiu { $by }
doubtBenchmark = { $mark } foi corrigida em { $by }: corrija a estação
doubtBumped = { $by } viu que se moveu
doubtDo = Sem ordens até que duas RNs concordem.
agreed = Concordam desde então: { $list }
sinceCheck = { $n } { $n ->
        [one] leitura
       *[other] leituras
    } desde a última conferência

due-bumped = CONFIRA O LASER: bateram nele
due-drift = CONFIRA O LASER: as repetições não concordam
due-overdue = CONFIRA O LASER: as ordens já dizem que não foi conferido
due-time = Hora de conferir: o prazo passou
due-readings = Hora de conferir: 25 leituras
due-temperature = Hora de conferir: a temperatura mudou
due-restart = Hora de conferir: o trabalho recomeça
suspectHead = { $setUp } { $from }–{ $to }: difere { $by }, { $n } { $n ->
        [one] leitura
       *[other] leituras
    } em dúvida
suspectOpen = { $setUp } desde { $from }: { $n } { $n ->
        [one] leitura
       *[other] leituras
    } SEM COMPROVAÇÃO, nenhuma RN lida desde então
reshoot = LER DE NOVO
standEither = Valem dos dois jeitos

standings-stands = vale
standings-earlier_stands = vale o que foi aceito antes
standings-shoot_again = pode estar errada
standings-unproven = não comprovada
ifMoved = { $booked }, ou { $moved } se o laser já tinha se movido
checked-good = Bom. Difere { $by }.
checked-again = Difere { $by }. Leia de novo.
checked-failed = Difere { $by }. O laser está em dúvida.
usable = A estação já aceita leituras.
proven = { $id } está comprovada. Já aceita leituras.
slipsAsk = Foi uma destas? Nada se muda sozinho.
slips-other_benchmark = Isso é { $used } menos { $perhaps }. Em qual está a mira?
slips-whole_foot = Um pé inteiro: leia de novo a marca do pé.
slips-tenth = Um décimo: leia de novo o décimo.
slips-digits_swapped = { $typed } em vez de { $perhaps }?
slips-bracket = O suporte: está na mira, está contado?
slips-rod_section = Um lance da mira: o de baixo está todo para fora?
slips-laser_moved = O laser se moveu? Leia { $benchmark } de novo: { $reads } diz que sim.
slips-inches_as_tenths = { $typed }: polegadas digitadas como décimos? { $perhaps }?
