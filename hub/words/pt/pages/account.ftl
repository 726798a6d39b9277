### Portuguese, read by no native speaker: what is counted: hours, loads, gravel, tests, aim. What each variable is stands in the English file.

spot = Uma leitura vale por, pés quadrados
loads = Cargas

way-out = SAI
way-in = ENTRA
how = Como foi medido?
takeBack = RETIRAR
low = fundo demais por { $yards } yd³
order = PEDIR
allMachines = Todas as máquinas
within = { $percent } % ficam dentro da tolerância
next = De quem se precisa a seguir
nobodyNext = Não se precisa de ninguém nos próximos dez minutos.
waits = { $machine } espera desde { $time }
lookBy = { $machine } em { $mark }: olhe até { $time }
arrives = { $mark } na cota por volta das { $at } ({ $from } a { $to })
arrivesHeld = { $mark }: faltam { $minutes } min de escavação; está parada
borrowed = ritmo de suas outras marcas
later = mais tarde
tests = Testes de solo

standing-passes = PASSA
standing-fails = NÃO PASSA
standing-void = NÃO VALE
patches = Remendos
patchLine = { $size } ft, { $cy } yd³

step-needed = FALTA
step-filled = CHEIO
step-compacted = COMPACTADO
step-tested = TESTADO
step-done = PRONTO
liftsOf = { $has } de { $of } camadas compactadas
lifts = Camadas compactadas
work = TRABALHO
waitTitle = O que ela espera?

wait-truck = CAMINHÕES
wait-attachment = ACESSÓRIO
wait-broken = QUEBRADA
wait-parked = ESTACIONADA
wait-other = OUTRA COISA
again = JÁ TRABALHA
