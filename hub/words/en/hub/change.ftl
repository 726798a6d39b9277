### What a change of the site is refused for.

why_site_changes_whose_word = why the site changes, and on whose word
# $zone (text) the face's name
face_is_left = { $zone } was left: everybody had to get away from it. Before it is changed or retired the competent person inspects it in FACES and says why work goes on.
