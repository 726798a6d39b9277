### Why rock points make no volume. Portuguese, read by no native speaker.

too_few = { $has } pontos de rocha não fazem superfície. Leia pelo menos { $fewest }, não em uma só linha.
