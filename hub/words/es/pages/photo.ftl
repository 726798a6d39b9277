### Spanish: a photo that was just taken. What each variable is stands in the English file.

keep = GUARDAR
throwAway = TIRAR
about = Qué muestra (puede quedar vacío)
reducing = Se reduce la foto…
size = { $width } × { $height }, { $kilobytes } kB, sin lugar, hora ni aparato.
nobodyInIt = No hace falta la cara de nadie.
noPicture = Este teléfono no puede leer ese archivo como imagen. Tírelo y tome la foto con la cámara.
withEntry = con el asiento { $entry }
