### Portuguese, read by no native speaker: coming in, and who holds a phone. What each variable is stands in the English file.

joinTitle = Entrar
joinWho = Nome ou iniciais
joinRole = O que você faz aqui
joinIn = ENTRAR
joinNeedName = Primeiro digite seu nome ou iniciais.
joinNeedRole = Primeiro aperte o que você faz aqui.
joinNeedCode = Escaneie um código da caminhonete para entrar, ou digite o endereço que está embaixo dele.
joinVoid = Este código não vale mais. Peça ao supervisor o código de hoje.
joinCab = Este celular vai ser a tela de { $machine }.
sameName = { $who } já está aqui, em outro celular desde { $time }. Quem é você?
sameNameIn = { $who } pode estar DENTRO em { $machine }. Por { $who } só diz que já saiu { $who }, ou alguém que olhou.
samePerson = SOU { $who }, EM OUTRO CELULAR
otherPerson = Sou outra pessoa. Meu nome aqui:
otherIn = ENTRAR COMO OUTRA PESSOA
stillYou = { $who }?
stillYouWhy = Este celular continuou registrado à noite. Diga quem está com ele; PARE funciona na hora.
yesIAm = SIM, SOU { $who }
somebodyElse = OUTRA PESSOA
giveCab = PASSAR A CABINE DE { $machine } A OUTRO CELULAR
giveCabNote = Depois escaneie o código da cabine com o outro celular em até 10 minutos. Não enquanto se mantém CAÇAMBA NO CHÃO nem se alguém pede para entrar ou está dentro.
getOut = Antes de alguém descer da cabine. De lá se pede para entrar em outra máquina.
joinStay = Se o celular disser que este Wi-Fi não tem internet: continue conectado. Não precisa dela.
