### What a machine's place is refused for. Portuguese, read by no native speaker.

somebody_has_said_since_where = Alguém disse desde então onde essa máquina está, ou que ela se moveu.
