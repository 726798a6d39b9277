### What a word about water that is pumped out is refused for. Portuguese, read by no native speaker.

somebody_said_that_water_stands = Alguém disse que há água ali depois do que esta página mostrava.
