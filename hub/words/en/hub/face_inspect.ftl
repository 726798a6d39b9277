### What the inspection of a face is refused for.

what_you_saw = what you saw: dry or wet, cracks, bulges, loads at the crest
what_your_hand_found = what your hand found: thumb, thread, penetrometer
something_seen_this_face_after = Something was seen or said of this face, of rain or of water pumped out, after that inspection.
people_had_get_away_from = People had to get away from this face again after what this page showed.
another_day_began = A new day has begun since: each face is inspected anew.
