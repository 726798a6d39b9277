### What a rock point is refused for. Portuguese, read by no native speaker.

has_no_reading_take_rock = { $mark } não tem leitura de onde tirar o topo da rocha. Leia, ou digite sua cota.
