### What a locate ticket is refused for.

somebody_has_said_since_paint = Alguien dijo después que se borró la pintura.
