### What a locate ticket is refused for. Portuguese, read by no native speaker.

somebody_has_said_since_paint = Alguém disse desde então que a pintura se apagou.
