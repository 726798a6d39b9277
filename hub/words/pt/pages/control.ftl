### Portuguese, read by no native speaker: CONTROL: levels, laser tests, targets typed again. What each variable is stands in the English file.

which = O que se faz?

tasks-type_again = REDIGITAR: cotas de um greide, por outra pessoa
tasks-levels = NIVELAMENTO: por pontos de mudança
tasks-turned = TESTE DO LASER: girado por quartos
tasks-two_peg = TESTE DO LASER: dois piquetes
tasks-compare = DOIS LASERS em um ponto
send = ENVIAR
target = Greide
laser = Laser
allTyped = Toda cota digitada já foi digitada por uma segunda pessoa.
unseen = Digite do projeto, não do quadro. O que difere é guardado, os dois valores; nada é mudado.
levelsNote = Anote cada estação como na caderneta. O nivelamento fecha em uma RN; além da tolerância nada é ajustado.
from = Da RN
to = Fecha na RN
setUp = Estação { $number }
behind = Visada de ré: mira em { $point }
behindUnnamed = Visada de ré: mira no ponto de trás
ahead = Visada de vante: mira em { $point }
aheadUnnamed = Visada de vante: mira no ponto da frente
point = Ponto
oneMore = MAIS UMA ESTAÇÃO
oneLess = UMA A MENOS

notes-turned = Uma mira, a 100 pés ou mais. Leia; gire o laser meia-volta e leia de novo; o mesmo com o outro eixo.
notes-two_peg = Leia os dois piquetes do meio entre eles, depois os dois de perto do piquete A.

read-distance = Do laser à mira, pés
read-first = Primeiro eixo para a mira
read-first_turned = Primeiro eixo, meia-volta
read-second = Segundo eixo para a mira
read-second_turned = Segundo eixo, meia-volta
read-middle_a = Piquete A, do meio
read-middle_b = Piquete B, do meio
read-near_a = Piquete A, de perto de A
read-far_b = Piquete B, de perto de A
read-to_a = Do laser ao piquete A, pés
read-to_b = Do laser ao piquete B, pés

more-where = Onde está a mira?
more-places-station = ESTACA e afastamento
more-places-ties = DUAS TRENAS a partir de marcas
more-places-paced = A PASSOS entre marcas
more-station = Estaca, como 18.5 ou 10+40
more-offset = Afastamento, pés
more-upStation = Olhando no sentido das estacas, a mira está à
more-first = Primeira marca
more-tape = Trena em nível da primeira, pés
more-second = Segunda marca
more-tape2 = Trena em nível da segunda, pés
more-toSecond = Da primeira, olhando para a segunda, a mira está à
more-paces = Passos da primeira
more-of = Passos do trecho todo
more-left = ESQUERDA
more-right = DIREITA
more-stands = A mira está sobre (se faltar: o fundo da escavação)
more-rod = Mira { $rod }, com { $setUp }
more-rocked = Outras leituras da mira balançada, separadas por ; vale a menor
more-blind = Lido sem ver a última?
more-no = NÃO
more-yes = SIM, ÀS CEGAS

paper-title = DO PAPEL
paper-note = Para leituras anotadas enquanto o servidor faltava. Valem como o medido então, ficam marcadas e nenhuma máquina é avisada.
paper-at = Lido às
paper-by = Lido por
paper-type = PASSAR AS LEITURAS
paper-end = TERMINEI COM O PAPEL
twoNeeded = Dois lasers devem estar instalados.
compareNote = Deixe a mira em um ponto firme e leia dos dois. Além de 0.02 pés, confira os dois.
rodFrom = Mira, lida de { $setUp }
rodFromUnpicked = Mira, lida dela
takeBenchmark = TOMAR UM PONTO NIVELADO COMO RN
misses = difere { $by } pés de { $allowed } permitidos.
newName = Nome da RN nova
looks = Como é e onde está
