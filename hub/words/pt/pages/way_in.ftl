### Portuguese, read by no native speaker: the way into a keep-out: what to do, then why. What each variable is stands in the English file.

ask = PEDIR A { $machine } PARA ENTRAR NA ZONA DELA
outside = NÃO ENTRO – LEIO DE FORA
within = { $mark } fica dentro da zona proibida de { $machine }.
placeOld = Ninguém disse há pouco onde está { $machine }: considere-se dentro.
tail = Atrás da parte giratória e ao lado das esteiras fique fora, mesmo com a caçamba no chão. O lado cego gira com a parte giratória.
asked = PEDIDO A { $machine } · { $time }
stayOut = FIQUE FORA
notAnswered = SEM RESPOSTA – FIQUE FORA – FAÇA CONTATO VISUAL
noScreen = NADA APARECE EM { $machine } – FIQUE FORA – FAÇA CONTATO VISUAL
waitSaid = A CABINE DIZ ESPERE – FIQUE FORA
noSaid = A CABINE DIZ NÃO – FIQUE FORA
comeIn = CAÇAMBA NO CHÃO. FAÇA CONTATO VISUAL. APERTE ENTRO AO ENTRAR.
inKey = ENTRO
notGoing = NÃO VOU ENTRAR
askAgain = PEDIR DE NOVO
seenNo = FICO FORA
youAreIn = VOCÊ ESTÁ DENTRO EM { $machine } · { $time }
outKey = JÁ SAÍ
withMe =
    { $others ->
        [0] VOU SEM MAIS NINGUÉM
       *[other] COMIGO: { $others }
    }
oneMore = vem mais um
oneLess = vem um a menos
allOut = JÁ SAÍMOS TODOS OS { $all }
allSeen = São { $all }. Só aperte quando tiver visto sair todos os { $all }.
toldOut = { $who } DIZ QUE VOCÊ JÁ SAIU DE { $machine }. É VERDADE?
toldOutInYourName = OUTRO CELULAR COM SEU NOME DIZ QUE VOCÊ JÁ SAIU DE { $machine }. É VERDADE?
stillIn = AINDA ESTOU DENTRO
edgeFirst = { $mark } fica dentro de uma zona proibida: peça para entrar antes de medir ali.
unconfirmed = A CABINE NÃO CONCORDOU – SAIA – FAÇA CONTATO VISUAL
screenLost = { $machine } SEM TELA – FAÇA CONTATO VISUAL OU SAIA
askNotSent = NÃO ENVIADO – FIQUE FORA – USE AS MÃOS
inNotSent = ENTRADA NÃO ENVIADA – A CABINE NÃO SABE – SAIA OU FAÇA CONTATO VISUAL
outNotSent = SAÍDA NÃO ENVIADA – NA TELA DA CABINE VOCÊ AINDA ESTÁ DENTRO
sending = ENVIANDO – FIQUE FORA
asks = { $who } PEDE PARA ENTRAR
asksAt = { $who } PEDE PARA ENTRAR EM { $mark }
told = A { $who } FOI DITO QUE ENTRE
isIn = { $who } ESTÁ DENTRO
isInUnasked = { $who } ESTÁ DENTRO – VOCÊ NÃO CONCORDOU
lostLink = SEM CONEXÃO
bucketDown = CAÇAMBA NO CHÃO · ALAVANCA TRAVADA
holdsDown = CAÇAMBA NO CHÃO
wait = ESPERE
no = NÃO
release = RETOMAR
notReleased = NÃO SE RETOMA: { $who } DENTRO. Olhe e espere o JÁ SAÍ.
empty = NINGUÉM DIZ ESTAR DENTRO – OLHE ANTES DE SEGURAR RETOMAR
nobody = NINGUÉM PEDIU PARA ENTRAR – OLHE MESMO ASSIM
wasIn = { $who } DENTRO. FIQUE PARADO.
shownAfter = APARECE NA CABINE DEPOIS DE RETOMAR

stages-asked = pede
stages-waiting = foi dito que espere
stages-refused = foi dito que não
stages-answered = foi dito que entre
stages-in = DENTRO
stages-unconfirmed = DENTRO, SEM ACORDO
