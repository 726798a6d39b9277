### What holds a call back, and what to do.

face_left = Nadie trabaja al pie de { $zone }: hubo que alejarse del talud. La persona competente lo inspecciona y dice por qué se vuelve.
line_struck = Cerca se golpeó una línea ({ $line }). Ahí nadie excava hasta que su dueño la haya visto; el supervisor da la razón.
daylight = El talud de { $zone } saldría sobre una línea que nadie cruza. Pregunte al ingeniero; el supervisor da la razón.
not_located = Ningún boleto de localización cubre este lugar. Pida que lo localicen; el supervisor da la razón.
not_located_at = Ningún boleto de localización cubre este lugar ({ $mark }). Pida que lo localicen; el supervisor da la razón.
ticket_lapsed = El boleto { $ticket } ya no vale hoy. Pida otro; el supervisor da la razón.
paint_gone = Se borró la marca de { $utility }. Pida que la pinten otra vez antes de excavar cerca.
too_near = { $zone } cruza { $utility } demasiado cerca. Pregunte al ingeniero antes de excavar ahí.
query = { $query } está sin contestar y el trabajo ahí espera la respuesta. Siga en otra parte; el supervisor anota la respuesta.
