### What holds a call back, and what to do. Portuguese, read by no native speaker.

face_left = Ninguém trabalha embaixo de { $zone }: todos tiveram que se afastar do talude. A pessoa competente o inspeciona e diz por que o trabalho segue.
line_struck = Uma linha foi atingida perto daqui ({ $line }). Ninguém cava ali até que o dono a tenha visto; o supervisor dá o motivo.
daylight = O talude de { $zone } sairia além de uma linha que ninguém pode cruzar. Pergunte ao engenheiro; o supervisor dá o motivo.
not_located = Nenhum protocolo de localização cobre este lugar. Peça que localizem; o supervisor dá o motivo.
not_located_at = Nenhum protocolo de localização cobre este lugar ({ $mark }). Peça que localizem; o supervisor dá o motivo.
ticket_lapsed = O protocolo { $ticket } não vale hoje. Peça outro; o supervisor dá o motivo.
paint_gone = A pintura de { $utility } se apagou. Peça que pintem de novo antes de cavar perto.
too_near = { $zone } cruza { $utility } perto demais. Pergunte ao engenheiro antes de cavar ali.
query = { $query } não foi respondida, e o trabalho ali espera a resposta. Siga em outro lugar; o supervisor anota a resposta.
