### Why a levelling does not hold.

height_not_changed = La altura del láser cambió solo { $changed }. Súbalo o bájelo por lo menos 0.10 ft y lea otra vez el banco y el punto.
disagrees = El punto salió a { $disagreement } de su primera cota; se permite { $allowed }. Lea otra vez el banco y el punto, con el estadal a plomo.
