### What a machine's stand is refused for.

somebody_has_said_since_where = Somebody has said since where this machine stands, or that it moved.
