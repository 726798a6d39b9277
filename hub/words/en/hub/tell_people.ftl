### People and phones as sentences.

# $person (text) the person's name or initials
# $other (text) the other one's name
joined_says_one_phone = { $person } joined, and says to be the one of phone { $other }.
# $person (text) the person's name or initials
joined = { $person } joined.
screen_settings_changed = Screen settings changed.
# $device (text) the phone's name
phone_removed = Phone { $device } removed.
codes_renewed = Codes renewed: the old ones open nothing.
codes_last_until_next_day = Codes last until the next day is opened.
codes_last_for_this_week = Codes last for this week.
codes_last_until_somebody_makes = Codes last until somebody makes new ones.
# $machine (text) the machine's name
cab_takes_phone_scans_its = The cab of { $machine } takes the phone that scans its code next.
# $device (text) the phone's name
# $person (text) the person's name or initials
confirmed = Confirmed: phone { $device } is { $person }'s.
# $person (text) the person's name or initials
phone_stays_joined_over_night = { $person }'s phone stays joined over the night.
# $person (text) the person's name or initials
phone_does_not_stay_joined = { $person }'s phone does not stay joined over the night.
# $person (text) the person's name or initials
has_same_phone_as_yesterday = { $person } has the same phone as yesterday.
# $person (text) the person's name or initials
somebody_else_has_phone_now = Somebody else has { $person }'s phone now: it is joined no more.
screen_shows = screen shows
screen_is_not_showing = SCREEN IS NOT SHOWING
screen_lost = SCREEN LOST: use hand signals
a_panel_over_the_number = ; a panel over the number; no sound yet
a_panel_over_the_number_2 = ; a panel over the number
no_sound_yet = ; no sound yet
nothing_over_the_number = ; nothing over the number; sound on
# $machine (text) the machine's name
# $what (text) what is meant, in this language
screen = { $machine } { $what }.
# $machine (text) the machine's name
# $what (text) what is meant, in this language
# $own (text) what the page says of itself, with a comma before it
screen_and_page = { $machine } { $what }{ $own }.
