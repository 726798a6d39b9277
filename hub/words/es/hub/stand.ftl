### What a machine's stand is refused for.

somebody_has_said_since_where = Alguien dijo después dónde está esta máquina, o que se movió.
