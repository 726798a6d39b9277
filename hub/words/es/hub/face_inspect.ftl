### What the inspection of a face is refused for.

what_you_saw = qué vio: seco o mojado, grietas, bultos, cargas en la corona
what_your_hand_found = qué halló con la mano: pulgar, rollito, penetrómetro
something_seen_this_face_after = Se vio algo en este talud después de esa inspección.
people_had_get_away_from = Hubo que alejarse otra vez de este talud después de lo que mostraba esta página.
