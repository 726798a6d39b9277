### What a word about rain is refused for. Portuguese, read by no native speaker.

somebody_said_that_it_stopped = Alguém disse desde então que a chuva parou.
somebody_said_that_it_rains = Alguém disse que chove depois do que esta página mostrava.
