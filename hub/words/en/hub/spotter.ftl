### What a spotter is refused for.

somebody_spots_for_machine_since = Somebody spots for that machine since you said so.
