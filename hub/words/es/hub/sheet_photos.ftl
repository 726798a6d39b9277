### Photos on sheets.

promised_by = Anunciada por{ " " }
not_waited_for_any_more = { " " }y ya no se espera:{ " " }
promised_and_not_delivered = Anunciada y no entregada: sigue en el teléfono de{ " " }
entry = asiento{ " " }
with_entry = , con el asiento{ " " }
not_shown = NO SE MUESTRA: cambiaron el archivo de esta foto después de que llegó. Su contenido no da la huella que nombra el registro.
not_shown_2 = NO SE MUESTRA: falta el archivo de esta foto en la carpeta de datos.
face = talud
photo = foto
printed_smaller = Las fotos de esta hoja pueden estar impresas más chicas de como llegaron. Cada SHA-256 es el de la foto como llegó, que se guarda con el registro: quien tenga ese archivo puede probarla.
