### What an alarm at a face is refused for.

people_had_get_away_from = Hubo que alejarse otra vez de este talud después de lo que mostraba esta pantalla.
