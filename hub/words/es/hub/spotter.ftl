### What a spotter is refused for.

somebody_spots_for_machine_since = Alguien es señalero de esa máquina desde que usted lo dijo.
