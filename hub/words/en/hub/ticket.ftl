### What a locate ticket is refused for.

somebody_has_said_since_paint = Somebody has said since that the paint is gone.
