### Portuguese, read by no native speaker: the review. What each variable is stands in the English file.

tab = REVER
day = Dia
part = Parte

parts-day = O DIA
parts-replay = REPETIR
parts-pictures = DESENHOS
parts-tables = HISTÓRIAS
parts-told = QUEM MANDOU
parts-paper = PAPEL

tableNames-as_built_csv = como ficou
tableNames-readings_csv = leituras
tableNames-calls_csv = ordens
tableNames-checks_csv = conferências do laser
tableNames-hours_csv = horas
tableNames-costs_csv = custos
tableNames-loads_csv = cargas
tableNames-patches_csv = remendos
tableNames-tests_csv = testes de solo
tableNames-rock_csv = rocha
tableNames-edges_csv = bordas
tableNames-exceptions_csv = fora do comum
tableNames-open_csv = o que está em aberto
tableNames-photos_csv = fotos
tableNames-as_built_xml = pontos como ficaram, LandXML
tableNames-marks_geojson = marcas, GeoJSON
none = Nenhum.
exceptions = Fora do comum

kinds-near_miss = QUASE ACIDENTE
kinds-stop = PARE
kinds-face = TALUDE
kinds-rain = CHUVA, ÁGUA
kinds-laser = LASER
kinds-asked = PERGUNTA
kinds-late = ATRASADA
kinds-override = DECIDIDO
kinds-call_lost = ORDEM PERDIDA
kinds-screen = TELA
kinds-test = TESTE DE SOLO
kinds-void = NÃO VALE
kinds-gravel = BRITA
kinds-buried = ENTERRADO
kinds-log_cut = REGISTRO CORTADO
kinds-paper = DO PAPEL
open = Em aberto
nothingOpen = Nada que o registro saiba.
lanes = O dia em faixas
lanesHere = Aperte um momento para repetir dali.

laneOf-machine = máquina
laneOf-screen = tela
laneOf-laser = laser
laneOf-person = pessoa

spans-showing = à vista
spans-hidden = oculta
spans-lost = sem conexão
spans-unproven = não comprovado
spans-proven = comprovado
spans-check_due = hora de conferir
spans-in_doubt = em dúvida
spans-on_site = na obra
asksIn = pede para entrar, { $machine }
isIn = dentro em { $machine }{ $unconfirmed ->
        [true] , NÃO CONFIRMADA
       *[false] { "" }
    }{ $lost ->
        [true] , sem conexão
       *[false] { "" }
    }
record = Posto no registro
changes = O que mudou na obra, e por quê
slider = Hora da repetição
before = ◂ ANTES
next = DEPOIS ▸
play = TOCAR
pause = PAUSA
speed = Velocidade

screens-none = sem tela
screens-showing = estava à vista
screens-hidden = ESTAVA OCULTA
screens-lost = ESTAVA SEM CONEXÃO
groundScreen = Solo
screenOf = Tela repetida, { $kind }
replayNote = Feita só do registro. ANTES e DEPOIS vão ao que foi fora do comum. Mostra o que a página tinha, não que alguém olhou.
planDifferences = Planta com diferenças finais, ft
runs = Trechos: o permitido, o obtido, com que dúvida
runNote = Tracejado: o permitido. Bigode: a dúvida da leitura. Estacas e cotas em pés.
notProven = { $feet } ft não comprovados
notProvenAt = { $feet } ft não comprovados ({ $where })
differences = Diferenças finais
differencesNote = Marcas por sua última diferença em meios décimos de pé; FUNDO à esquerda, ALTO à direita.
depth = Fundura ao longo do tempo
depthNote = Diferença para o greide em pés, ALTO acima. A faixa é o permitido. Linhas finas: quando o fundo era esperado na cota. Uma cruz não foi tomada.
delays = Da ordem ao entendi
delaysNote = Traço: até ser mostrada. Anel: até ENTENDI. Uma cruz nunca foi mostrada. Mais de 30 s na borda de cima.
historyOf = Histórias

histories-calls = ORDENS
histories-marks = MARCAS
histories-setUps = ESTAÇÕES
only = Só com

callColumns-1 = Enviada
callColumns-2 = Quem
callColumns-3 = Máquina
callColumns-4 = Marca
callColumns-5 = Na tela
callColumns-6 = Celular, s
callColumns-7 = Mostrada, s
callColumns-8 = ENTENDI, s
callColumns-9 = Terminou
readingsOn = { $n } { $n ->
        [one] leitura
       *[other] leituras
    }
atMark = Perto da marca
atPlace = um lugar
fromDay = Do dia
toDay = Até o dia
noDayThen = O registro não tem nenhum dia nesse tempo.
amendedLater = Emendado em dias posteriores
from = De, como 10:05
to = Até
ask = QUEM MANDOU CAVAR?
gaps = O que o registro não diz
noGaps = Nenhuma lacuna foi achada.
marksThere = Ao alcance: { $list }.
noMarksThere = Nenhuma marca ao alcance.
wholeSheet = A FOLHA INTEIRA, COM SUA PROVA
sheets = Folhas

sheetNames-day = RELATÓRIO DO DIA
sheetNames-as_built = COMO FICOU
sheetNames-hand_over = ENTREGA
sheetNames-cab_card = CARTÃO DA CABINE
sheetNames-hand_signals = SINAIS
sheetsNote = Cada uma abre sem o servidor, imprime em preto e branco e leva a cabeça da cadeia.
tables = Tabelas

legend-free = escava, à vista, comprovado, na obra
legend-hatch = espera, ainda não comprovado, em uma zona proibida
legend-dots = oculta, hora de conferir, pede para entrar
legend-ink = parada, sem conexão, em dúvida
legend-noted = fora do comum
legend-target = até onde cavar
legend-allowed = permitido
legend-sure = uma última leitura, e sua dúvida
legend-taken = tomada
legend-notTaken = não tomada
legend-expected = quando o fundo era esperado na cota
legend-painted = até ser mostrada
legend-gotIt = até ENTENDI
legend-neverPainted = nunca mostrada
legend-onTarget = no greide
legend-howMany = quantas marcas
legend-soil = terra
legend-rock = rocha
legend-least = o menor custo

momentsOf = Momentos
momentsNoted = o que foi fora do comum
momentsAll = tudo o que foi dito
momentsMark = marca { $mark }
momentsWith = Palavras
noMoment = Nenhum momento combina.
moments = { $many } { $many ->
        [one] momento
       *[other] momentos
    }
finalOf = Diferença final, ft
lastAt = Última leitura
choose = escolha
owed-machine = Escolha a máquina de que se pergunta.
owed-place = Escolha uma marca, ou digite leste e norte do lugar em pés.
owed-from = De: um dia, e uma hora como 10:05.
owed-to = Até: um dia, e uma hora como 15:40.
owed-order = O fim está antes do começo.
asked = { $machine }, { $place }, { $from } a { $to }
nearMark = perto de { $mark }
nearPlace = perto de E { $east } N { $north } ft

lanesAll = TODAS AS { $many } FAIXAS
lanesFew = MENOS FAIXAS
