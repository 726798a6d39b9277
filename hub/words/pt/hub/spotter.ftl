### What a spotter is refused for. Portuguese, read by no native speaker.

somebody_spots_for_machine_since = Alguém é sinaleiro dessa máquina desde que você disse isso.
