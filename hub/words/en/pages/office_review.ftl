### office().review
### English, the reference: the review.

tab = REVIEW
day = Day
part = Part

parts-day = THE DAY
parts-replay = REPLAY
parts-pictures = PICTURES
parts-tables = HISTORIES
parts-told = WHO TOLD
parts-paper = PAPER

tableNames-as_built_csv = as built
tableNames-readings_csv = readings
tableNames-calls_csv = calls
tableNames-checks_csv = laser checks
tableNames-hours_csv = hours
tableNames-costs_csv = costs
tableNames-loads_csv = loads
tableNames-patches_csv = patches
tableNames-tests_csv = soil tests
tableNames-rock_csv = rock
tableNames-edges_csv = edges
tableNames-exceptions_csv = out of the ordinary
tableNames-open_csv = what is open
tableNames-photos_csv = photos
tableNames-as_built_xml = as-built points, LandXML
tableNames-marks_geojson = marks, GeoJSON

none = None.
exceptions = Out of the ordinary

kinds-near_miss = NEAR MISS
kinds-stop = STOP
kinds-face = FACE
kinds-rain = RAIN, WATER
kinds-laser = LASER
kinds-asked = ASKED
kinds-late = LATE
kinds-override = DECIDED
kinds-call_lost = CALL LOST
kinds-screen = SCREEN
kinds-test = SOIL TEST
kinds-void = VOID
kinds-gravel = GRAVEL
kinds-buried = BURIED
kinds-log_cut = LOG CUT
kinds-paper = FROM PAPER

open = Open
nothingOpen = Nothing that the log knows of.
lanes = The day as lanes
lanesHere = Press a moment to replay from there.

laneOf-machine = machine
laneOf-screen = screen
laneOf-laser = laser
laneOf-person = person

spans-showing = showing
spans-hidden = hidden
spans-lost = no link
spans-unproven = not proven
spans-proven = proven
spans-check_due = check due
spans-in_doubt = in doubt
spans-on_site = on site

# $machine (text) the machine's name
asksIn = asks in, { $machine }

# $machine (text) the machine's name
# $unconfirmed (text) whether the cab had not agreed
# $lost (text) whether the link was lost
isIn = in at { $machine }{ $unconfirmed ->
        [true] , UNCONFIRMED
       *[false] { "" }
    }{ $lost ->
        [true] , no link
       *[false] { "" }
    }
record = Put on record
changes = What changed in the site, and why
slider = Time of the replay
before = ◂ BEFORE
next = NEXT ▸
play = PLAY
pause = PAUSE
speed = Speed

screens-none = no screen
screens-showing = was showing
screens-hidden = WAS HIDDEN
screens-lost = HAD NO LINK

groundScreen = Ground

# $kind (text) whose screen it is
screenOf = Replayed screen, { $kind }
replayNote = Made from the log alone. It shows what the page had, not that a person looked.
planDifferences = Plan with final differences, ft
runs = Runs: what is allowed, what was got, how sure
runNote = Stations and elevations in feet.

# $feet (text) feet
notProven = { $feet } ft not proven

# $feet (text) feet
# $where (text) the stretches, from station to station
notProvenAt = { $feet } ft not proven ({ $where })
differences = Final differences
differencesNote = Marks by their last difference in half-tenths of a foot; LOW to the left, HIGH to the right.
depth = Depth over time
depthNote = Difference to the target in feet, HIGH above.
delays = From call to got it
delaysNote = Over 30 s stands at the upper edge, with its seconds.
historyOf = Histories

histories-calls = CALLS
histories-marks = MARKS
histories-setUps = SET-UPS

only = Only with

callColumns-1 = Sent
callColumns-2 = By
callColumns-3 = Machine
callColumns-4 = Mark
callColumns-5 = On the screen
callColumns-6 = Phone, s
callColumns-7 = Painted, s
callColumns-8 = GOT IT, s
callColumns-9 = Ended

# $n (number) how many
readingsOn = { $n } { $n ->
        [one] reading
       *[other] readings
    }
atMark = Near the mark
atPlace = a place
fromDay = From day
toDay = Until day
noDayThen = The log has no day in this time.
amendedLater = Amended on later days
from = From, such as 10:05
to = To
ask = WHO TOLD IT TO DIG?
gaps = What the log does not say
noGaps = No gap was found.

# $list (text) marks with how far off they are
marksThere = Within reach: { $list }.
noMarksThere = No mark within reach.
wholeSheet = THE WHOLE SHEET, WITH ITS PROOF
sheets = Sheets

sheetNames-day = DAY REPORT
sheetNames-as_built = AS BUILT
sheetNames-hand_over = HAND-OVER
sheetNames-cab_card = CAB CARD
sheetNames-hand_signals = HAND SIGNALS

sheetsNote = Each opens without the hub, prints black and white, and carries the head of the chain.
tables = Tables

legend-free = digging, showing, proven, on site
legend-hatch = waiting, not yet proven, in a keep-out
legend-dots = hidden, check due, asks to come in
legend-ink = stopped, no link, in doubt
legend-noted = out of the ordinary
legend-target = what to dig to
legend-allowed = allowed
legend-sure = a last reading, and how sure it is
legend-taken = taken
legend-notTaken = not taken
legend-expected = when the bottom was expected at grade
legend-painted = until painted
legend-gotIt = until GOT IT
legend-neverPainted = never painted
legend-onTarget = on the target
legend-howMany = how many marks
legend-soil = soil
legend-rock = rock
legend-least = the least cost

momentsOf = Moments
momentsNoted = out of the ordinary
momentsAll = all that was said

# $mark (text) the mark's name
momentsMark = mark { $mark }
momentsWith = Words
noMoment = No moment fits.

# $many (number) how many moments
moments = { $many } { $many ->
        [one] moment
       *[other] moments
    }

finalOf = Final difference, ft
lastAt = Last shot
choose = choose
owed-machine = Choose the machine that is asked about.
owed-place = Choose a mark, or type east and north of the place in feet.
owed-from = From: a day, and a time such as 10:05.
owed-to = To: a day, and a time such as 15:40.
owed-order = The end lies before the beginning.

# $machine (text) the machine
# $place (text) the mark or the place
# $from (text) from when
# $to (text) until when
asked = { $machine }, { $place }, { $from } to { $to }

# $mark (text) the mark's name
nearMark = near { $mark }

# $east (text) feet
# $north (text) feet
nearPlace = near E { $east } N { $north } ft

# $many (number) how many lanes
lanesAll = ALL { $many } LANES
lanesFew = FEWER LANES
