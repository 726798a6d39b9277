### What the inspection of a face is refused for.

what_you_saw = qué vio: seco o mojado, grietas, bultos, cargas en la corona
what_your_hand_found = qué halló con la mano: pulgar, rollito, penetrómetro
something_seen_this_face_after = Después de esa inspección se vio o se avisó algo de este talud, de lluvia o de agua bombeada.
people_had_get_away_from = Hubo que alejarse otra vez de este talud después de lo que mostraba esta página.
another_day_began = Desde entonces empezó otro día: cada talud se inspecciona de nuevo.
