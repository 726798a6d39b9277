### What an alarm at a face is refused for.

people_had_get_away_from = People had to get away from this face again after what this screen showed.
