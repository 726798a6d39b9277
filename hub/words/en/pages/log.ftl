### log()
### English, the reference: LOG, the table of entries. It comes in a script of its own.

columns-seq = No.
columns-made = Made
columns-by = Who
columns-kind = What
columns-machine = Machine
columns-mark = Mark
columns-verdict = Verdict
columns-text = In words

# $time (text) when the hub took it
came = came { $time }
everyDay = every day
any = any
words = With the words
from = From
to = Until
timeHint = 10:05

# $text (text) what was typed
noTime = “{ $text }” is no time of day. Write it as 10:05.
filters = FILTER

# $many (number) how many filters act
filtersOn = FILTER · { $many } on
noFilter = TAKE OFF THE FILTER

# $fit (text) how many lines fit
# $all (text) how many were looked at
count = { $fit } of { $all } lines

# $fit (text) how many lines fit
# $seq (number) the entry down to which was looked
countDown = { $fit } lines fit, looked at down to entry { $seq }

# $fit (text) how many lines
countAll = { $fit } lines
looks = Looking…
further = LOOK FURTHER BACK
again = TRY AGAIN
# $many (number) how many lines
fresh = { $many } NEW { $many ->
        [one] LINE
       *[other] LINES
    } ▴
noLine = No line fits.
noLineYet = The log has no line of this day.
copyLines = COPY LINES
csvLines = CSV OF THESE LINES

# $many (number) how many lines
copiedLines = { $many } { $many ->
        [one] line is
       *[other] lines are
    } copied.
copiedEntry = Copied.
notCopied = This browser does not let the page copy. Mark the text and copy it by hand.
whole = THE WHOLE LOG
onPaper = Paper has the lines in sight alone. For all of them take the CSV, or the day’s sheet under REVIEW, PAPER.
table = Lines of the log

# $seq (number) the entry's number
entry = Entry { $seq }
taken = Taken by the hub
phone = Phone
proof = Proof
hash = Its hash
prev = Follows the hash
proves = This page worked the hash out from the text: it is the same.
provesNot = This page gets another hash from the text. An older hub may have written it in another way: only the file can say. Run `rodcall verify` on the data folder.

# $seq (number) the number of the entry before
linked = Entry { $seq } has this hash: the chain holds here.

# $seq (number) the number of the entry before
linkedNot = ENTRY { $seq } HAS ANOTHER HASH. Run `rodcall verify` on the data folder before you rely on this log.
first = The first entry: nothing is before it.

# $seq (number) the number of the entry before
before = The hash of entry { $seq } could not be looked up.
kept = As it is kept
copy = COPY
replay = REPLAY FROM HERE
close = CLOSE


verdicts-high = HIGH
verdicts-on = ON
verdicts-low = LOW
verdicts-too_close_high = TOO CLOSE, HIGH
verdicts-too_close_low = TOO CLOSE, LOW

kinds-day_opened = day opened
kinds-site_taken = site file taken in
kinds-site_change_found = site file differs
kinds-site_revised = site revised
kinds-joined = phone came in
kinds-screen_changed = screen changed
kinds-phone_removed = phone removed
kinds-codes_renewed = new codes
kinds-codes_last = how long codes last
kinds-cab_given = cab given over
kinds-person_confirmed = person confirmed
kinds-phone_stays = phone overnight
kinds-who_said = who holds a phone
kinds-laser_set_up = laser set up
kinds-set_up_restated = backsight restated
kinds-set_up_proven = laser proven
kinds-set_up_closed = laser taken down
kinds-check_shot = check shot
kinds-set_up_doubted = laser in doubt
kinds-laser_tested = laser tested
kinds-levels_run = levels run
kinds-benchmark_added = benchmark added
kinds-set_ups_compared = set-ups compared
kinds-blind_pair = second shot blind
kinds-check_fell_due = check due
kinds-suspect_window = readings in doubt
kinds-mark_repeated = mark repeated
kinds-question_settled = question answered
kinds-reading_taken = reading
kinds-reading_asked = reading asked about
kinds-reading_late = late reading
kinds-reading_called_wrong = reading called wrong
kinds-unsent_dropped = unsent thrown away
kinds-marks_laid = marks laid
kinds-marks_checked = marks checked
kinds-marks_scraped = marks gone
kinds-ties_taken = ties taken
kinds-diagonals_measured = diagonals
kinds-edge_read = edge taped
kinds-call_sent = call sent
kinds-call_delivered = call on the phone
kinds-call_shown = call on the screen
kinds-call_got = GOT IT
kinds-call_ended = call ended
kinds-look_asked = look asked
kinds-cant_said = CAN'T
kinds-screen_noticed = cab's screen
kinds-stopped = STOP
kinds-stop_lifted = STOP lifted
kinds-start_check_said = start check
kinds-day_ready = day ready
kinds-near_found = something near
kinds-slew_proposed = slew to agree
kinds-slew_agreed = slew agreed
kinds-slew_voided = slew void
kinds-spotter_set = spotter named
kinds-spotter_gone = no spotter any more
kinds-battery_said = battery
kinds-near_miss_opened = near miss
kinds-near_miss_told = told of a near miss
kinds-aim_set = aim set
kinds-site_changed = site changed
kinds-target_revised = target revised
kinds-target_typed = target typed again
kinds-target_seen = target seen
kinds-ruled = ruling
kinds-machine_placed = machine placed
kinds-machine_moved = machine moved
kinds-load_counted = load counted
kinds-ticket_added = ticket of a load
kinds-load_taken_back = load taken back
kinds-soil_measured = soil measured
kinds-gravel_ordered = gravel ordered
kinds-gravel_short = gravel short
kinds-patch_needed = patch needed
kinds-patch_moved = patch goes on
kinds-compacted = lift rammed
kinds-soil_tested = soil test
kinds-test_voided = soil test void
kinds-undercut_proposed = undercut proposed
kinds-undercut_confirmed = undercut in force
kinds-rock_pointed = rock
kinds-prices_set = prices
kinds-waiting_said = machine waits
kinds-worked_again = works again
kinds-face_inspected = face inspected
kinds-soil_retyped = soil class changed
kinds-face_revised = face by design
kinds-daylight_found = daylight line
kinds-seen_at_face = seen at a face
kinds-rain_began = rain began
kinds-rain_stopped = rain stopped
kinds-water_pumped = water pumped out
kinds-slough_seen = face came down
kinds-pins_read = pins taped
kinds-face_alarmed = GET AWAY FROM THE FACE
kinds-face_left = away from the face
kinds-under_left_face = under a face left
kinds-depth_owed = owed at its depth
kinds-ticket_checked = locate ticket
kinds-paint_said = paint of a buried line
kinds-line_struck = buried line struck
kinds-pothole_dug = buried line bared
kinds-dig_allowed = let go on
kinds-day_closed = day closed
kinds-day_signed = day signed
kinds-day_amended = amendment
kinds-note_added = note
kinds-visitor_noticed = visitor
kinds-runs_shown = what a visitor sees
kinds-inspection_asked = inspection asked
kinds-inspected = inspection
kinds-inspection_signed = inspection signed
kinds-inspection_voided = inspection void
kinds-acceptance_voided = acceptance void
kinds-query_opened = query
kinds-query_answered = query answered
kinds-photo_promised = photo taken
kinds-photo_added = photo came
kinds-photo_given_up = photo not waited for
kinds-head_mismatch = log cut
kinds-entry_asked = asks to come in
kinds-ask_repeated = asks again
kinds-ask_withdrawn = not coming in
kinds-entry_delayed = WAIT
kinds-entry_refused = no to coming in
kinds-bucket_is_down = BUCKET DOWN
kinds-person_in = person in
kinds-person_out = person out
kinds-out_seen = has seen: out
kinds-release_refused = not released
kinds-released = released
kinds-link_noticed = link of a person
