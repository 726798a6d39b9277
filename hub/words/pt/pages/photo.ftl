### Portuguese, read by no native speaker: a photo that was just taken. What each variable is stands in the English file.

keep = GUARDAR
throwAway = JOGAR FORA
about = O que mostra (pode ficar vazio)
reducing = A foto está sendo reduzida…
size = { $width } × { $height }, { $kilobytes } kB, sem lugar, hora nem aparelho.
nobodyInIt = O rosto de ninguém é necessário.
noPicture = Este celular não consegue ler esse arquivo como imagem. Jogue fora e tire a foto com a câmera.
withEntry = com o lançamento { $entry }
