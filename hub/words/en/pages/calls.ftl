### t()
### English, the reference: calls and what became of them.

states-waiting = SENDING
states-not_sent = NOT SENT – USE HANDS
states-sent = SENT
states-delivered = ON THE CAB'S PHONE
states-shown = ON THE CAB'S SCREEN
states-got = GOT IT PRESSED IN THE CAB
states-not_on_screen = NOT ON THE CAB'S SCREEN – USE HANDS

# $who (text) the person's name
nodded = { $who } SAW THE CAB NOD

endings-superseded = A NEWER CALL TOOK ITS PLACE
endings-done = DONE
endings-stale_by_age = TOO OLD – REMOVED
endings-grade_ran_out = GRADE WAS SAID
endings-stale_by_laser = LASER IN DOUBT – REMOVED
endings-stale_by_mark = MARK LAID AGAIN – REMOVED
endings-stale_by_target = TARGET CHANGED – REMOVED
endings-restated = RESTATED
endings-withdrawn = WITHDRAWN
endings-refused = THE CAB CAN'T
endings-new_screen = NEW PHONE IN THE CAB
endings-ruled = RULED
endings-stale_by_face = AWAY FROM THE FACE – REMOVED
endings-query_asked = ENGINEER ASKED – REMOVED
endings-day_closed = DAY CLOSED
endings-held = WORK THERE IS HELD – REMOVED
endings-machine_moved = THE MACHINE MOVED – REMOVED
endings-given_away = GIVEN TO ANOTHER MACHINE
endings-off_site = MACHINE NOT ON THE SITE FILE
endings-clock_behind = AGE UNKNOWN – REMOVED

ended-superseded = NEWER CALL
ended-done = DONE
ended-stale_by_age = OLD – ASK
ended-grade_ran_out = GRADE WAS SAID
ended-stale_by_laser = LASER IN DOUBT
ended-stale_by_mark = MARK LAID AGAIN
ended-stale_by_target = TARGET CHANGED
ended-restated = WRONG NUMBER
ended-withdrawn = WITHDRAWN
ended-refused = YOU SAID CAN'T
ended-new_screen = NEW PHONE
ended-ruled = RULED
ended-stale_by_face = AWAY FROM THE FACE
ended-query_asked = ENGINEER ASKED
ended-day_closed = DAY CLOSED
ended-held = WORK HELD
ended-machine_moved = MACHINE MOVED
ended-given_away = GIVEN AWAY
ended-off_site = NOT ON THE SITE FILE
ended-clock_behind = AGE UNKNOWN

endedDo = The number is removed. Ask the ground person.
callStands = CALL
northLetter = N

# $side (text) the side by the compass, such as NORTH
toThe = TO THE { $side }

labels-one_benchmark = ONE BENCHMARK
labels-not_checked = LASER NOT CHECKED
labels-high_by_rule = HIGH BY RULE
labels-by_ruling = BY RULING
labels-confirmed = ASKED AND CONFIRMED
labels-not_proved = TARGET NOT DOUBLE-CHECKED
labels-hand_dig = HAND DIG
labels-face_not_inspected = FACE NOT INSPECTED

# $at (text) the time of day, such as 10:05
notCheckedSince = LASER NOT CHECKED SINCE { $at }

quick-more = MORE
quick-a_little = A LITTLE
quick-there = THERE
quick-too_deep = TOO DEEP
quick-come_to_me = COME TO ME
quick-look_here = LOOK HERE

byEye = BY EYE

ways-down = DOWN
ways-shave = SHAVE
ways-grade = GRADE
ways-up = UP
ways-wait = WAIT
ways-ruling = THE SUPERVISOR RULES

feetWord = FEET
inchWord = IN

# $feet (number) feet
wholeFeet = { $feet } FT
high = HIGH
low = LOW

# $word (text) HIGH or LOW
# $by (text) by how much, with its unit
groundIs = Ground is { $word } { $by }

# $dev (text) the signed difference to the target
onGrade = ON GRADE { $dev }

# $dev (text) the signed difference to the target
tooClose = TOO CLOSE { $dev }

# $dev (text) the signed difference to the target
groundOn = Ground is on grade ({ $dev })

# $dev (text) the signed difference to the target
groundClose = Too close to call ({ $dev }). Shoot again after this.

# $machine (text) the machine's name
# $call (text) the call's text
told = { $machine }: { $call }

cant-hard_ground = HARD GROUND
cant-water = WATER
cant-pipe = PIPE
cant-line = LINE
cant-face = FACE
cant-other = OTHER
