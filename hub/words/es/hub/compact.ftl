### What ramming is refused for.

is_not_filled_yet = { $name } todavía no está lleno. Diga que está lleno y apisónelo.
