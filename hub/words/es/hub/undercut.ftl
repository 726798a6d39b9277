### What an undercut is refused for.

belongs_to_no_target = { $mark } no es de ninguna rasante: no hay qué sobreexcavar.
