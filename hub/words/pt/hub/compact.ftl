### What ramming is refused for. Portuguese, read by no native speaker.

is_not_filled_yet = { $name } ainda não está cheio. Diga que está cheio e depois compacte.
