### What a machine's place is refused for.

somebody_has_said_since_where = Alguien dijo después dónde está esa máquina, o que se movió.
