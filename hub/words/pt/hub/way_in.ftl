### What coming in is refused for. Portuguese, read by no native speaker.

say_how_many_come_along = Diga quantos vão com você: { $led_at_most } no máximo.
what_you_have_seen = o que você viu
is_your_own_machine = { $own } é sua própria máquina. Segure CAÇAMBA NO CHÃO antes de descer da cabine.
hold_bucket_down_before_you = Segure CAÇAMBA NO CHÃO em { $own } antes de descer; depois peça a { $machine }.
