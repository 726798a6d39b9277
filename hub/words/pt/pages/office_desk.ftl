### Portuguese, read by no native speaker: the supervisor's desk: its plan, what its signs mean, and the card of what was pressed. What each variable is stands in the English file.

signs-unread = não lida
signs-spot = sem greide
signs-on = na cota
signs-high = alta
signs-low = funda
signs-too_close = no limite
signs-again = ler de novo
legend = Sinais
noRoom =
    { $n ->
        [one] { $n } nome não cabe
       *[other] { $n } nomes não cabem
    }: chegue mais perto.
outOfSight =
    { $n ->
        [one] { $n } marca fica fora da vista.
       *[other] { $n } marcas ficam fora da vista.
    }
countOf =
    { $n ->
        [one] mais { $n } marca: { $ids }
       *[other] mais { $n } marcas: { $ids }
    }. Chegue mais perto.
bar = { $feet } ft
planKeys = Roda ou + e −: mais perto, mais longe. Arrastar ou setas: ao longo. Aperte uma coisa: sua ficha.
readings = Leituras
calls = Ordens
photos = Fotos
history = História
marksOf = Marcas
stack = Greide
station = estaca { $station } ft
rightOf = { $feet } ft à direita
leftOf = { $feet } ft à esquerda
place = E { $east } N { $north } ft
layer = { $name } { $feet } ft
allowed = permitido +{ $high } / −{ $low } ft
aim = pontaria { $feet } ft
nearStep = perto do degrau em { $station }: { $before } antes, { $after } depois
noTarget = sem greide
noGrade = aqui não há greide
stoodBy = onde { $by } disse às { $at }; nada a detecta
nobodySaid = Ninguém disse onde está.
keepOut = zona proibida { $feet } ft
reach = alcance { $reach } ft, traseira { $tail } ft
lineKinds-property = divisa do terreno
lineKinds-easement = faixa de servidão
lineKinds-setback = recuo obrigatório
lineKinds-limit_of_work = limite da obra
noCross = ninguém escava além dela
keepSide-left = o trabalho fica à esquerda, olhando ao longo dela
keepSide-right = o trabalho fica à direita, olhando ao longo dela
doubt = seu lugar se conhece a ± { $feet } ft
lowest = o mais baixo, { $feet } ft acima do terreno
voltage = { $kv } kV
voltageAtMost = no máximo { $kv } kV
voltageUnknown = tensão desconhecida
bottom = fundo a { $feet } ft
across = { $feet } ft de lado a lado
elevation = cota { $feet } ft
kinds-mark = marca
kinds-machine = máquina
kinds-line = linha
kinds-buried = linha enterrada
kinds-overhead = linha aérea
kinds-face = talude ou vala
kinds-ticket = protocolo de localização
kinds-pile = monte
kinds-structure = sapata ou muro
kinds-benchmark = RN
kinds-target = greide
phones = CELULARES { $n }
start = CONFERÊNCIAS DE INÍCIO
lastReadings = ÚLTIMAS LEITURAS
proven = NÃO COMPROVADO
noStop = Nenhum PARE está em vigor.
