### What a machine's stand is refused for. Portuguese, read by no native speaker.

somebody_has_said_since_where = Alguém disse desde então onde esta máquina está, ou que ela se moveu.
