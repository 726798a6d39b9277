### Portuguese, read by no native speaker: what was said and not taken: a STOP, a reading that waits, a page without a hub, a key that can't be pressed yet. What each variable is stands in the English file.

stopWaits = SEU PARE NÃO CHEGOU – GRITE – USE AS MÃOS
stopNobody = NINGUÉM OUVIU SEU PARE – GRITE – USE AS MÃOS
stopNobodyWhy = O servidor não conhece este celular. Escaneie um código e aperte PARE de novo.
stopSeen = JÁ ESTÁ PARADA
onlyInMemory = Este celular não consegue guardar nada. Deixe esta página aberta: o que não foi enviado some com ela.
ask = NÃO ENVIADO, há { $age }: { $what }. Ainda vale?
drop = JOGAR FORA
dropped = JOGADO FORA. Nenhuma cabine foi avisada.
wentOut = Já tinha saído antes de a conexão cair. É retirado da cabine.
left =
    { $n ->
        [one] { $n } COISA DESTE CELULAR NÃO ENVIADA
       *[other] { $n } COISAS DESTE CELULAR NÃO ENVIADAS
    }
leaving = { $mark }: sem resolver
leavingQuestion = A pergunta sobre esta leitura não tem resposta. Deixada assim, nada é dito à cabine.
leavingWrong = Disseram que um número está errado e o certo não foi digitado. A cabine não tem número para esta marca.
stayHere = FICAR NESTA MARCA
leaveIt = DEIXAR EM ABERTO
noHub = SEM CONEXÃO COM O SERVIDOR
stayOut = FIQUE FORA – USE AS MÃOS
watchGround = OLHE PARA QUEM ESTÁ EM SOLO
lastKnown = Último que se soube, às { $time }:
wasIn = { $who } DENTRO EM { $machine }
youWereIn = VOCÊ ESTAVA DENTRO EM { $machine } – FAÇA CONTATO VISUAL OU SAIA
nobodyKnown = Ninguém tinha dito DENTRO. Pode ter mudado.
wasStopped = Havia PARE para { $machine }
asking = Esta página pergunta ao servidor sem parar.

owed-something = Falta algo acima
owed-rod = Digite a leitura da mira
owed-number = Digite o número
owed-side = Aperte ANTES ou DEPOIS
owed-mark = Escolha uma marca
owed-setUp = Nenhum laser instalado: veja LASER
owed-place = Diga onde a mira está
owed-overLine = Aperte de que lado da linha
owed-line = Escolha a linha
owed-machine = Escolha a máquina
owed-stop = Aperte PARE entre os sinais
owed-words = Digite as palavras
owed-name = Digite o nome
owed-sizes = Digite as três em pés
owed-time = Digite a hora
owed-material = Digite o que o caminhão leva
owed-yards = Jardas: só algarismos, ou nada
owed-wait = Sendo enviado
owed-noReading = Nada foi tomado que possa estar errado
owed-gotIt = ENTENDI já foi apertado
