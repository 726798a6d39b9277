### Spanish: CONTROL: levels, laser tests, targets typed again. What each variable is stands in the English file.

which = ¿Qué se hace?

tasks-type_again = ESCRIBIR OTRA VEZ: cotas de una rasante, por otra persona
tasks-levels = NIVELACIÓN: por puntos de cambio
tasks-turned = PRUEBA DEL LÁSER: girado por cuartos
tasks-two_peg = PRUEBA DEL LÁSER: dos estacas
tasks-compare = DOS LÁSERES en un punto
send = ENVIAR
target = Rasante
laser = Láser
allTyped = Toda cota escrita ya la escribió también otra persona.
unseen = Escriba desde el plano, no desde el tablero. Lo que difiere se guarda, ambos valores; nada se cambia.
levelsNote = Anote cada puesta como en la libreta. La nivelación cierra en un banco; fuera de tolerancia no se ajusta nada.
from = Desde el banco
to = Cierra en el banco
setUp = Puesta { $number }
behind = Lectura atrás: estadal en { $point }
behindUnnamed = Lectura atrás: estadal en el punto de atrás
ahead = Lectura adelante: estadal en { $point }
aheadUnnamed = Lectura adelante: estadal en el punto de adelante
point = Punto
oneMore = UNA PUESTA MÁS
oneLess = UNA MENOS

notes-turned = Un estadal, a 100 pies o más. Lea; gire el láser media vuelta y lea otra vez; lo mismo con el otro eje.
notes-two_peg = Lea las dos estacas desde el medio, luego las dos desde cerca de la estaca A.

read-distance = Del láser al estadal, pies
read-first = Primer eje hacia el estadal
read-first_turned = Primer eje, media vuelta
read-second = Segundo eje hacia el estadal
read-second_turned = Segundo eje, media vuelta
read-middle_a = Estaca A desde el medio
read-middle_b = Estaca B desde el medio
read-near_a = Estaca A desde cerca de A
read-far_b = Estaca B desde cerca de A
read-to_a = Del láser a la estaca A, pies
read-to_b = Del láser a la estaca B, pies

more-where = ¿Dónde está el estadal?
more-places-station = ESTACIÓN y distancia
more-places-ties = DOS CINTAS desde marcas
more-places-paced = A PASOS entre marcas
more-station = Estación, como 18.5 o 10+40
more-offset = Distancia al eje, pies
more-upStation = Mirando hacia adelante, el estadal está a la
more-first = Primera marca
more-tape = Cinta a nivel desde la primera, pies
more-second = Segunda marca
more-tape2 = Cinta a nivel desde la segunda, pies
more-toSecond = Desde la primera, mirando a la segunda, el estadal está a la
more-paces = Pasos desde la primera
more-of = Pasos de todo el tramo
more-left = IZQUIERDA
more-right = DERECHA
more-stands = El estadal está sobre (si falta: el fondo de la excavación)
more-rod = Estadal { $rod }, con { $setUp }
more-rocked = Otras lecturas del estadal balanceado, separadas por ; vale la menor
more-blind = ¿Leído sin ver la última?
more-no = NO
more-yes = SÍ, A CIEGAS

paper-title = DEL PAPEL
paper-note = Para lecturas que se anotaron mientras faltaba el servidor. Valen como lo medido entonces, quedan señaladas y no se avisa a ninguna máquina.
paper-at = Hora de la lectura
paper-by = Leída por
paper-type = PASAR LAS LECTURAS
paper-end = TERMINÉ CON EL PAPEL
twoNeeded = Deben estar puestos dos láseres.
compareNote = Deje el estadal en un punto firme y léalo desde los dos. Si difieren más de 0.02 pies, revise ambos.
rodFrom = Estadal, leído desde { $setUp }
rodFromUnpicked = Estadal, leído desde la puesta
takeBenchmark = TOMAR UN PUNTO NIVELADO COMO BANCO
misses = difiere { $by } pies de { $allowed } permitidos.
newName = Nombre del banco nuevo
looks = Cómo se ve y dónde está
