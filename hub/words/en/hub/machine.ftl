### What a machine's place is refused for.

somebody_has_said_since_where = Somebody has said since where that machine stands, or that it moved.
