### What coming in is refused for.

say_how_many_come_along = Diga cuántos van con usted: { $led_at_most } a lo más.
what_you_have_seen = qué ha visto
is_your_own_machine = { $own } es su propia máquina. Mantenga CUCHARÓN ABAJO antes de bajar de la cabina.
hold_bucket_down_before_you = Mantenga CUCHARÓN ABAJO en { $own } antes de bajar; después pida a { $machine }.
