### Portuguese, read by no native speaker: faces and what is buried. What each variable is stands in the English file.

face = TALUDE
pipes = ENTERRADO
faces = Taludes e valas
caution = Um lembrete: diz que regra ou número não é cumprido. Primeiro vêm o juízo da pessoa competente, o engenheiro e a norma.
oneCallFirst = A localização vem antes de tudo o que está desenhado aqui; uma linha é perigosa em toda profundidade até ser exposta à mão.

also-falling_loads = Ninguém embaixo de uma caçamba ou carga, nem ao lado de um caminhão sendo carregado.
also-mobile_equipment = Onde a cabine não vê a borda: barreiras, sinais ou batentes.
also-atmosphere = O ar pode estar ruim? É medido antes de alguém entrar.
also-water = Ninguém trabalha onde há ou entra água antes de se tomarem precauções.
also-edge = Uma borda difícil de ver leva guarda-corpo ou barreira.
competent = Pessoa competente: { $who }
classIs = CLASSE { $name }
notClassed = SEM CLASSE: conta como C

classes-rock = ROCHA
classes-a = A
classes-b = B
classes-c = C
loweredFrom = escolhida { $picked }, rebaixada por { $why }

lowered-material = o próprio solo
lowered-strength = sua resistência
lowered-thumb = o polegar
lowered-cracks = trincas
lowered-vibration = vibração
lowered-disturbed = já ter sido escavado
lowered-water = água
lowered-dip = camadas que caem para o corte
height = { $feet } ft de altura no máximo
slope = { $runs } para 1
upTo = { $run } para 1 até { $top } ft
above = { $run } para 1 acima
designed = projeto próprio do engenheiro
signed = Inspecionado por { $who } às { $at }
due = FALTA INSPEÇÃO: { $why }
overdue = INSPEÇÃO VENCIDA: { $why }; trabalha-se embaixo desde { $at }

dueWhy-new_day = nenhuma hoje
dueWhy-seen = algo foi visto
dueWhy-left = todos tiveram que se afastar do talude
dueWhy-rain = chuva
dueWhy-water = água foi bombeada
leave = AFASTEM-SE DO TALUDE
leaveStrip = { $name }: ninguém a menos de { $feet } ft do pé do talude
leaveWhy-pins = Os pinos { $pins } se abrem rápido demais
leaveWhy-slough = Caiu
leaveWhy-said = Alguém diz que se move
leaveDo = Recue para fora do alcance dele. Depois aperte.
away = JÁ ME AFASTEI
mustLeave = Ainda não se afastaram: { $machines }
pinsNow = { $pins } { $apart } ft, { $rate } ft por hora
pinsNone = { $pins } ainda não medidos

pinStates-still = IMÓVEL
pinStates-watch = VIGIAR
pinStates-leave = AFASTEM-SE
crest = Em { $mark }: { $run } para 1, { $degrees }°
crestBack = crista recuada { $back } ft; { $yards } yd³ por pé pendem
benches = ou banquetas a partir de baixo: { $rises } ft de altura, patamares de pelo menos { $treads } ft
ladders = { $n } { $n ->
        [one] escada
       *[other] escadas
    }, para que ninguém ande mais de { $travel } ft
crestFlat = tão suave quanto sua classe pede
daylight = ENCONTRO COM O TERRENO
lineOver = além de { $line } por { $feet } ft
lineIn = { $line }: { $feet } ft para dentro
overAt = pé do talude, estaca { $from } a { $to }
highEngineer = Mais alto que as tabelas: um engenheiro projeta
missing = { $n } { $n ->
        [one] lugar
       *[other] lugares
    } sem encontro com o terreno ou sem terreno conhecido
structure = { $name }: { $feet } ft de espaço
influence = pé do talude { $feet } ft abaixo de sua linha de 1 para 1: pergunte ao engenheiro

seenAt-water = ÁGUA
seenAt-crack = TRINCA
seenAt-rain = CHUVA
seenAt-vibration = VIBRA
seenAt-load = CARGA NA CRISTA
seenAt-trimmed = ACERTADO
cameDown = CAIU
seenLine = { $what } · { $who } · { $at }
loadBack = Recuo da crista, ft

slough-told = Cada cabine e celular diz AFASTEM-SE DO TALUDE. Quando ninguém estiver embaixo: quanto caiu?
slough-length = Ao longo do talude, ft
slough-height = Altura, ft
slough-back = Para trás, ft
slough-mark = Marca mais próxima
pins = PINOS
pinsTape = Trena, ft
inspect = INSPECIONAR
inspectTitle = Inspeção de { $name }
pickClass = Classe de solo que você escolhe
seen = O que você vê: seco ou molhado, trincas, barrigas, cargas
byHand = O que a mão acha: polegar, rolinho, penetrômetro
strength = Penetrômetro de bolso, tsf
thumb = Polegar

thumbs-great_effort = MARCA, DIFÍCIL DE ENTERRAR
thumbs-some_effort = ENTRA COM ESFORÇO
thumbs-easily = ENTRA FÁCIL
material = Solo

materials-stable_rock = ROCHA FIRME
materials-loose_rock = ROCHA SOLTA
materials-cemented = CIMENTADO
materials-cohesive = ARGILA
materials-silt_or_angular = SILTE, FRANCO-ARENOSO
materials-granular = AREIA, BRITA
found = Achado

finds-cracks = TRINCAS
finds-vibration = VIBRA
finds-disturbed = JÁ ESCAVADO
finds-water = ÁGUA
release = Por que as pessoas voltam para baixo dele
sign = ASSINAR
signRetype = MUDAR CLASSE DO SOLO
why = Por quê? Fica no registro.
onlyLowers = Não classifica nenhum solo: a pessoa competente escolhe, os achados só rebaixam a classe.
retypeTitle = Solo de { $name }

## What is buried
utilities = Linhas enterradas

kinds-gas = GÁS
kinds-electric = ENERGIA
kinds-communication = TELEFONE, CABO
kinds-water = ÁGUA
kinds-reclaimed = ÁGUA DE REÚSO
kinds-sewer = ESGOTO
kinds-unknown = NÃO SE SABE
depthUnknown = PROFUNDIDADE DESCONHECIDA: exponha à mão, toda profundidade é perigosa
bared = topo { $top }, fundo { $bottom } ft · { $who }
crossing = { $zone }: à mão da estaca { $from } a { $to }
clear = a { $clear } ft, pede { $need } ft
tooNear = PERTO DEMAIS: pergunte ao engenheiro
paintGone = PINTURA APAGADA
paintAgain = PINTADA DE NOVO
bare = EXPOSTA
bareTitle = { $name } exposta à mão
topFeet = Cota do topo, ft
sizeInches = Diâmetro externo, in
callOwner = Ligue: { $who }
handDig = CAVE À MÃO
handDigAt = { $kind }: estaca { $from } a { $to }
ticketHolds = { $id } vale até { $to }, mais { $days } { $days ->
        [one] dia
       *[other] dias
    }
ticketLapsed = { $id } NÃO VALE HOJE (até { $to }): peça outro
ticketChecked = visto por { $who }, { $at }
ticketNotChecked = NÃO VISTO HOJE
ticketSilent = sem resposta: { $kinds }

## On calls
held = SEM ORDEM. { $why }

depthRules-egress = ESCADA
depthRules-protection = PROTEÇÃO
depthRules-engineer = ENGENHEIRO
depthStates-ahead = devido a { $limit } ft, faltam { $left } ft descendo
depthStates-next_tenth = o próximo décimo: faltam { $left } ft para { $limit } ft
depthStates-owed = DEVIDO: passou de { $limit } ft
rains = CHOVE, avisado às { $at }
pumpedOut = ÁGUA BOMBEADA
rainStopped = A CHUVA PAROU
toldSince = Desde que esta folha foi aberta, algo foi dito deste talude, de chuva ou de água. Olhe de novo.
lookedAgain = OLHEI DE NOVO
