### Why something can't be done, and what to do instead.

no_day = No day is open. Start the hub again, or ask the supervisor to open one.
no_site = No site is loaded. Start the hub with a site file.
# $roles (text) who may do it, as “Ask … to do it” goes on
not_allowed = This phone can't do that. Ask { $roles } to do it.
# $set_up (text) the laser set-up as people read it: SETUP-1
set_up_not_proven = { $set_up } is not proven yet. Shoot a second benchmark first.
# $set_up (text) the laser set-up as people read it: SETUP-1
set_up_is_closed = { $set_up } is taken down. Pick the set-up that stands now, or set up again.
# $set_up (text) the laser set-up as people read it: SETUP-1
set_ups_alike = { $set_up } stands at almost the same height. Take it down first, or move this one by half a foot: a reading could not tell which laser it is from.
# $other (text) who else may, or another benchmark
second_benchmark_there = This site has more than one benchmark. Shoot { $other } to prove the set-up.
# $mark (text) the mark's name
which_side = { $mark } is within half a foot of a step. Say which side the rod is on.
# $mark (text) the mark's name
mark_scraped = { $mark } is not on the ground any more. Lay it again from a hub, a string or control first.
# $mark (text) the mark's name
same_eyes = { $mark } was laid by the same person. Somebody else measures it a second time.
no_line = This site has no line that must not be crossed. Add one to the site file with no_cross = true.
which_line = This site has several lines that must not be crossed. Say which one was taped to.
call_not_live = That call is not live any more. Look at the screen: a newer one may be there.
# $mark (text) the mark's name
nothing_to_rule = { $mark } waits for no ruling. Rule on marks that two shots left too close to call.
# $mark (text) the mark's name
nothing_to_trim = { $mark } is too close to call on the LOW side: there is nothing to trim. Leave it, or patch it with gravel.
# $low (text) the lower limit
# $high (text) how high, or the upper limit
aim_outside = That aim lies outside of the tolerance ({ $low } to { $high }). Aim inside it, or revise the target.
# $what (text) what is to be said, to follow “Say” in each language
say_why = Say { $what }: it goes into the log.
site_changed_again = The site has changed again since it was shown. Look at the difference once more, then confirm.
no_site_change = No changed site file waits. There is nothing to confirm.
# $person (text) the person's name or initials
# $machine (text) the machine's name
cab_taken = { $person }'s phone is the screen of { $machine }. Whoever sits there gives the cab away first (SCREEN, GIVE THE CAB), or a supervisor does (NOW, phones joined); then press IN again.
# $person (text) the person's name or initials
# $machine (text) the machine's name
cab_held = { $person }'s phone is the screen of { $machine }, and its bucket is held down, or somebody asks or is in. No other phone takes it now. If that phone is dead, a supervisor removes it; then press IN again.
# $person (text) the person's name or initials
say_who = Say first whether you are { $person }.
# $person (text) the person's name or initials
not_confirmed = { $person } is named in the site file, but nobody has confirmed yet that this phone is { $person }'s. A supervisor does it on another phone or the laptop: NOW, phones joined.
# $person (text) the person's name or initials
witness_unknown = A witness's phone was in before { $person } went in, or a supervisor has confirmed whose it is. Ask somebody else to look, or have a supervisor confirm this phone: NOW, phones joined.
# $person (text) the person's name or initials
# $inside (text) how many are in, or how far inside
# $said (text) how many were said to be out
not_all_out = { $person } leads { $inside } in. Say OUT when all of them are out, and how many; you said { $said }.
not_that_question = That question was about another mark. Send the reading again.
# $ticket (text) the ticket's name
# $days (text) its first and last day
ticket_lapsed = Ticket { $ticket } holds for { $days }, not today. Ask for a new one.
# $person (text) the person's name or initials
# $machine (text) the machine's name
already_in = { $person } is in at { $machine } already. Press I AM OUT first.
say_out_instead = You are in. Press I AM OUT when you are out.
not_asked = Nobody waits for that answer any more. Look at the list.
# $machine (text) the machine's name
not_in = Nobody is in at { $machine } on that visit. Look at the list.
# $person (text) the person's name or initials
not_your_visit = That is { $person }'s visit. Who has seen { $person } out says so as a witness.
no_witness = A witness is somebody else, and not this machine's own operator. Ask another person to look.
# $person (text) the person's name or initials
answer_first = { $person } asks to come in. Answer first: BUCKET DOWN, WAIT or NO.
pressed_too_late = That press came too late to count. Hold it again.
# $ms (text) how long ago
said_too_late = You said that { $ms } ago and it came only now. Look, and say it again if it still holds.
# $signed (text) `true` when the day is signed
day_is_closed = The day is closed. It still takes notes, tests, queries and photos{ $signed ->
        [true] , and amendments under a signature
       *[false] { "" }
    }; to dig on, the supervisor opens the next day.
# $missing (text) what is missing
not_ready_to_close = The day can't be closed yet. Missing: { $missing }.
no_such_reading = The reading to correct is not in this day's log. Take a new one.
thing-mark = mark
thing-target = target
thing-machine = machine
thing-benchmark = benchmark
thing-rod = rod
thing-laser = laser
thing-set_up = set-up
thing-phone = phone
thing-turning_point = turning point
thing-mark_or_target = mark or target
thing-line = line that must not be crossed
thing-load = load
thing-patch = patch, mark or target
thing-test = soil test
thing-undercut = proposed undercut
thing-face = face
thing-pins = pair of pins
thing-structure = footing or wall
thing-utility = buried line
thing-overhead = line overhead
thing-pile = pile
thing-ticket = ticket
thing-near_miss = open near miss
thing-visitor = visitor
thing-inspection = inspection that waits
thing-query = query
thing-photo = photo
role-ground = a ground person
role-operator = the operator
role-supervisor = the supervisor
role-visitor = a visitor
role-hub = the hub
# $one (text) the first who may
# $other (text) who else may, or another benchmark
role-or = { $one } or { $other }
# $machine (text) the machine's name
operator_of = the operator of { $machine }
# $what (text) the kind of thing, in this language
# $name (text) its name
unknown = There is no { $what } named { $name } on this site. Pick one from the list.
no_mark_to_tape_from = Say from which mark the tape goes.
# $person (text) the person's name or initials
# $another (text) a name that nobody has
same_name = { $person } is here already, on another phone. If that is you, say so; if not, go by another name: { $another }.
# $person (text) the person's name or initials
# $machine (text) the machine's name
# $another (text) a name that nobody has
same_name_in = { $person } is here already, on another phone, and may be IN at { $machine }. If that is you, say so; if not, go by another name: { $another }.
# $names (text) their names, with commas between
not_competent = Only the competent person can do that: { $names }.
nobody_competent = Only the competent person can do that: the site file names nobody; add competent = ["…"].
bad_visit = That visit has no proper name. Open the page again and ask anew.
# $many (number) how many
# $people (text) their names, with commas between
# $machine (text) the machine's name
people_in = { $many ->
        [one] { $people } is in at { $machine }. Everybody comes out first; then lift the stop.
       *[other] { $people } are in at { $machine }. Everybody comes out first; then lift the stop.
    }
