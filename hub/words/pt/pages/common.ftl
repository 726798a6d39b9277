### Portuguese, read by no native speaker: what every page has: STOP, links, roles, good-byes. What each variable is stands in the English file.

title = Rodcall
stop = PARE
stopAll = PARE: todas as máquinas
back = VOLTAR
cancel = CANCELAR
close = FECHAR
skip = PULAR
none = nenhum
hold = segure
heldShort = SOLTOU ANTES DA HORA: SEGURE ATÉ ENCHER
loading = Perguntando ao servidor…
noHub = O servidor não responde. Fique no Wi-Fi da equipe e tente de novo.
linkLost = SEM CONEXÃO
linkLostDo = Sem conexão com o servidor. Use as mãos. Esta página tenta de novo sozinha.
linkUp = Conexão ativa
haltedTitle = SEM NÚMEROS – USE AS MÃOS
notInTheLog = Este PARE não está no registro: o servidor não consegue escrever. Anote quem e quando.
offSiteDo = O arquivo da obra não tem mais esta máquina. Pergunte ao supervisor. PARE continua parando todos.
halted = O servidor não consegue guardar o registro e não aceita ordens. Use as mãos, veja o notebook.
photo = FOTO
nobodyInIt = ninguém precisa aparecer
photosWait =
    { $n ->
        [one] { $n } foto espera neste celular.
       *[other] { $n } fotos esperam neste celular.
    }
notSentCount = NÃO ENVIADO: { $n } – USE AS MÃOS
dropped = { $n } sem envio com o nome de antes. { $n ->
        [one] Faça de novo.
       *[other] Faça todas de novo.
    }
ago = há { $time }
caution = É um lembrete, não uma proteção: não detecta ninguém. O que vale é o contato visual.
lookAlways = Não haver ninguém na lista não quer dizer que não há ninguém lá: OLHE.

struck-key = ATINGIDA
struck-title = LINHA ATINGIDA:
struck-notDrawn = não desenhada
struck-asks-get_away = GÁS. TODOS PARA LONGE JÁ, CONTRA O VENTO. Saiam e se afastem da máquina; sem chama, sem interruptor, sem celular por perto. De longe liguem para o 911, depois para o dono. Ninguém volta antes de os bombeiros dizerem.
struck-asks-live = ENERGIA. NÃO TOQUEM EM NADA, NÃO SE APROXIMEM: máquina e chão podem estar energizados. Na cabine fique dentro, a não ser que pegue fogo. Liguem para o 911, depois para o dono.
struck-asks-touch_nothing = NÃO TOQUEM EM NADA, TODOS FORA DO BURACO. Liguem para o dono; se alguém se feriu, para o 911.
struck-asks-not_known = TUBO OU CABO, NÃO SE SABE DE QUÊ. NÃO TOQUEM EM NADA. Se foi atingido, chia ou cheira: todos para longe contra o vento, 911, depois o dono.
cautionShort = Lembrete, não proteção: não detecta ninguém.

roles-ground = SOLO
roles-operator = OPERADOR
roles-supervisor = SUPERVISOR
roles-visitor = VISITA
roles-hub = SERVIDOR

bye-removed = Este celular foi removido. Escaneie um código para entrar de novo.
bye-retired = Outro celular é agora a tela desta máquina. Este não mostra ordens.
bye-ask_who = Começou outro dia.
bye-day_over = O dia terminou. Escaneie um código novo amanhã.
bye-closing = O servidor está fechando.
