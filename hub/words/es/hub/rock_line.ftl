### Why rock points make no volume.

too_few = { $has } puntos de roca no hacen superficie. Tome al menos { $fewest }, no en una línea.
