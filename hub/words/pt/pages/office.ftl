### Portuguese, read by no native speaker: the supervisor's pages. What each variable is stands in the English file.

yes = SIM

shapes-fold = planos dobrados
shapes-along = perfil ao longo de uma linha
shapes-trench = vala
shapes-face = talude
shapes-surface = superfície
shapes-strip = abaixo do terreno como está
shapes-contour = curva de nível
pocketSheet = FOLHA DE BOLSO
cabPapers = Para cada cabine e para a caminhonete, para quando só restarem as mãos:

sheetBooked-1 = Mira
sheetBooked-2 = Hora
sheetBooked-3 = Quem
sheetAfterwards = Anote aqui o que foi lido; depois, MAIS · DO PAPEL em LER o recebe.
noSheets = Nenhum laser instalado: instale um primeiro.
entry = lançamento
allowed = Permitido, ft
sheetUnproven = SEM COMPROVAÇÃO: leia uma segunda RN antes de usar.
sheetVoid = Não vale mais quando este laser é desmontado ou movido, ou quando um greide ganha nova revisão.
sheetTenths = Uma mira que dá menos está em terreno alto: { $list } décimos a descer. Uma que dá mais está fundo, tantos décimos fundo demais.
unprovenRuns = Não comprovado
unprovenRun = { $name }: { $feet } de { $of } pés ({ $gaps })
questionsCame = { $asked } leituras com pergunta: { $slips } erros, { $hits } deles como sugerido
logTab = REGISTRO
codesTab = CÓDIGOS
targetsTab = GREIDES
siteTab = OBRA
add = ACRESCENTAR
retire = RETIRAR
newThing = novo
mayBeLeftOut = opcional
east = Leste
north = Norte
moreOfIt = MAIS UM
lessOfIt = TIRAR
lookAtIt = VER PRIMEIRO
showAll = VER TODOS OS { $n }
retireNote = O que se disse dele continua no registro.
withItsMarks = VER: COM { $n ->
        [one] SUA { $n } MARCA
       *[other] SUAS { $n } MARCAS
    }
nothingDiffers = Nada difere do que está em vigor.
touchesMost = Uma cota a cavar muda até { $ft } ft.
importKey = IMPORTAR
importFile = Importar pontos
chooseFile = Uma tabela de pontos (CSV) ou LandXML 1.2
countsIn = Conta em, quando não diz

planUnits-foot = PÉS
planUnits-survey_foot = PÉS TOPO.
planUnits-metre = METROS
coordinatesOf = Suas coordenadas são
ofSite = DA OBRA
ofPlan = DO PROJETO
understood = Entendido
notUnderstood = Não entendido, ou deixado de lado
lineNo = Linha { $n }:
becomes = Os pontos viram
targetOfMarks = Greide destas marcas
onlyFirst = O arquivo tem { $all } pontos; de uma vez são tomados os primeiros { $n }. Divida o arquivo para o resto, ou nomeie-o no arquivo da obra.
leftOut =
    { $n ->
        [one] Fica de fora { $n } ponto
       *[other] Ficam de fora { $n } pontos
    }: sem nome ou sem cota.
exportSite = Exportar: três arquivos que ficam em uma só pasta. Se a obra tem regras de escavação próprias, ponha esse arquivo junto deles como excavation-rules.toml.
siteChanged = A mudança está em vigor e no registro.
exceptions = Precisa de alguém
noExceptions = Nada espera por ninguém.
remove = REMOVER
removeAsk = Remover o celular de { $who }? Ele terá que escanear um código de novo.
lift = LEVANTAR PARE
liftWhy = O que você viu antes de levantar?
liftOne = SÓ { $machine }
liftAll = TODAS: { $machines }

slew-act = COMBINAR GIRO
slew-title = { $one } e { $other }
slew-why = As lanças podem bater. Os dois operadores apertam DE ACORDO; deixa de valer assim que uma se move.
slew-keepsOut = { $machine } não entra nem gira para
slew-note = Uma palavra sobre isso
slew-propose = MOSTRAR NAS DUAS CABINES
slew-canMeet = { $one } e { $other } podem bater: a { $apart } pés, precisa de { $needs }
slew-spotterNeeded = { $machine } pode chegar perto demais da linha aérea { $line }: precisa de sinaleiro
slew-onSlope = { $machine }: esteiras { $inside } pés dentro do declive de { $zone }, a pessoa competente decide

startDay-ready = O DIA ESTÁ PRONTO
startDay-whyWithout = Estas não têm valor. Por que se começa sem elas?
startDay-needs = Dia não pronto: { $said } de { $of } conferências

nearMiss-title = Quase acidentes
nearMiss-name = QA-{ $n }
nearMiss-act = QUASE ACIDENTE
nearMiss-ask = O que aconteceu, e o que se fez?
nearMiss-add = ACRESCENTAR
nearMiss-close = ENCERRAR O CASO
nearMiss-knew = O que o servidor sabia então: o dito por último, nada o detecta
nearMiss-said = Dito
nearMiss-stood = em E { $east } N { $north } ({ $by }, { $at })
nearMiss-noPlace = ninguém tinha dito onde
nearMiss-face = { $zone } a { $feet } pés
nearMiss-facesLeft = Taludes de que já era preciso se afastar: { $zones }
nearMiss-needsWords = QA-{ $n }: { $by } apertou PARE para todas. Diga o que aconteceu.
nearMiss-needsWordsWhy = QA-{ $n }: { $by } apertou PARE para todas: { $why }. Diga o que aconteceu.

rulings-leave = DEIXAR
rulings-patch = REMENDAR
rulings-trim = RASPAR
exception-stopped = { $machine } parada por { $by }
exception-stopped_why = { $machine } parada por { $by }: { $why }
exception-laser_in_doubt = { $setUp } em dúvida: leia duas RNs
exception-needs_ruling = { $mark } está { $dev }: duas leituras no limite
exception-cant = { $machine } não pode: { $why }
exception-cant_at = { $machine } não pode em { $mark }: { $why }
exception-screen_not_showing = { $machine }: nada aparece na cabine. Mãos.
exception-site_changed = O arquivo da obra mudou
exception-target_not_seen = { $machine } não viu { $target } novo
exception-ties_first = { $machine } vai levar { $marks }, postas a partir de outra marca e sem amarrações: amarre antes
exception-look_asked = { $machine } pede que confiram
exception-target_typed_apart = { $target } foi digitado duas vezes e difere: { $apart }
showDifference = VER
siteChange = O arquivo da obra mudou. Nada disso está em vigor ainda.
confirmChange = PÔR EM VIGOR
oddInPlan = Estranho no plano novo
touches = Toca { $marks }.
touchesOut = Toca { $marks }. Aceitas antes, fora agora: { $out }.

wasNow-what = O quê
wasNow-was = Era
wasNow-now = É
wasNow-digTo = Cavar até, ft
undoes = DESFAZ O QUE { $who } MUDOU AQUI, { $at } (“{ $why }”): { $what }.
layersTake = as camadas tiravam { $were } ft, tiram { $are } ft
moreChanges = também mudam sua superfície, contorno, sobrescavações ou tolerância
lastMarks = Últimas leituras
aimSet = FIXAR
aimOn = Em
aimNow = { $on } agora: pontaria { $aim } pés, greide r{ $revision }
aimHint = Pés; negativo é mais fundo
noAims = A pontaria é o greide em toda parte.
revise = REVISAR GREIDE
badNumber = Digite um número de pés, como 302.00.
newCodes = CÓDIGOS NOVOS
codesLast = Quanto valem os códigos

lasts-today = HOJE
lasts-this_week = ESTA SEMANA
lasts-until_renewed = ATÉ HAVER NOVOS
lastsNote = Quem tem um código entra enquanto ele valer. Faça novos quando um se perder ou uma equipe for embora.

phones-open = CELULAR
phones-of = Celular de { $who }
phones-asksWho = ninguém disse quem está com ele
phones-confirmed = confirmado por { $by }
phones-notConfirmed = NÃO CONFIRMADO: não conta como pessoa competente
phones-stays = continua registrado à noite
phones-confirmAsk = Olhe em que mãos está. Então o celular conta hoje como de { $who }: como testemunha, e como pessoa competente se o arquivo da obra nomeia { $who }.
phones-confirm = É { $who }
phones-letStay = DEIXAR REGISTRADO À NOITE
phones-noStay = NÃO MAIS À NOITE
phones-giveAsk = Outro celular pode tomar a cabine de { $machine } em até 10 minutos.
phones-give = PASSAR A CABINE DE { $machine }
newCodesAsk = Anular todos os códigos e imprimir outros? Os celulares já registrados continuam registrados.
print = IMPRIMIR
codesAddress = Os celulares chegam ao servidor em
addressChanged = O endereço não é o de ontem. Imprima os códigos de novo.
wifi = Wi-Fi
choose = USAR ESTE
exportDay = Arquivo do dia
exportTable = Tabela

restore-key = TESTAR A CÓPIA
restore-tries = Exportando, recebendo de novo, comparando…
restore-back = Tudo voltou, cada folha igual. Lançamentos { $entries }, fotos { $photos }, dias { $days }, folhas { $sheets }.

verdicts-high = ALTO
verdicts-on = NA COTA
verdicts-low = FUNDO
verdicts-too_close_high = no limite, lado ALTO
verdicts-too_close_low = no limite, lado FUNDO

cuts-tab = TALUDES
cuts-noFaces = O arquivo da obra não nomeia talude nem vala.
cuts-rulesBy = Regras: { $name }
cuts-engineerTitle = Alturas de livro e previsões são só para o engenheiro: não são permissão.
cuts-critical = Alturas críticas de livro de uma face vertical: c { $c } psf (metade da resistência), { $weight } pcf, um solo, seco, sem carga. Água em uma trinca diminui cada uma.
cuts-noTension = não se conta com tração; uma trinca seca pode ir até o fundo
cuts-halfCracked = trincada da crista até meia altura (Terzaghi)
cuts-uncracked = inteira até a crista e resistindo à tração: a mais otimista
cuts-noCritical = Sem altura crítica: nenhuma resistência foi medida.
cuts-forecast = Um dividido pela velocidade da trinca chega a nada às { $at }: duas velocidades, sem promessa
cuts-design = PROJETO DO ENGENHEIRO
cuts-designTitle = Projeto próprio do engenheiro para { $name }
cuts-designBelow = Recuo para 1 a partir do pé do talude
cuts-designTop = Até a cota, ft; vazio até o terreno
cuts-designAbove = Recuo para 1 acima disso
cuts-designWhy = De quem é o projeto, onde está escrito?
cuts-allowAt = Para qual marca? A permissão é só para esse lugar.
cuts-notLocated = SEM PROTOCOLO: { $n } { $n ->
        [one] marca
       *[other] marcas
    }
cuts-allow = DEIXAR SEGUIR
cuts-allowAsk = Por que segue, por palavra de quem?
cuts-ticket = Protocolo de localização
cuts-checkTicket = CONFERIR PROTOCOLO
cuts-answers-marked = MARCADO
cuts-answers-none_here = NADA AQUI
cuts-answers-silent = SEM RESPOSTA
cuts-exception-face_left = Todos tiveram que se afastar de { $zone }: { $why }
cuts-exception-inspection_due = { $zone }: falta inspeção, { $why }
cuts-exception-inspection_overdue = { $zone }: trabalha-se embaixo sem inspeção, { $why }
cuts-exception-daylight_over = { $zone } sairia { $feet } ft além de { $line }
cuts-exception-daylight_touch = { $zone } sairia em { $line }
cuts-exception-crossing = { $zone } cruza { $line } com { $clear } ft, pede { $need }
cuts-exception-pile_at_crest = { $pile } está a { $back } pés atrás da crista de { $zone }: leve para trás até { $need } pés
cuts-exception-paint_gone = A pintura de { $line } se apagou: peça de novo

wayIn-inside = Em uma zona proibida
wayIn-nobodyIn = Ninguém disse que está dentro. Olhe mesmo assim.
wayIn-sawOut = VISTO FORA
wayIn-sawOutTitle = { $who } fora em { $machine }
wayIn-sawOutAsk = O que você viu? Fica no registro.
wayIn-tellThem = Diga a { $who }: agora conta como fora, e peça de novo antes de entrar.
wayIn-needsUnconfirmed = ENTRADA NÃO CONFIRMADA: { $who } em { $machine }. Faça { $who } sair.
wayIn-needsLink = { $who } está DENTRO em { $machine }, sem conexão. Olhe.
wayIn-needsAnswer = { $who } pede em { $machine }: sem resposta.
