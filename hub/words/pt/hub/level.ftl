### Why a levelling does not hold. Portuguese, read by no native speaker.

height_not_changed = A altura do laser só mudou { $changed }. Suba ou baixe o laser pelo menos 0.10 ft, depois leia de novo a RN e o ponto.
disagrees = O ponto saiu a { $disagreement } de sua primeira cota; são permitidos { $allowed }. Leia de novo a RN e o ponto, com a mira a prumo.
