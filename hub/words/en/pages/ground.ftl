### t()
### English, the reference: the ground person's page: readings, marks, paint, ties, edges, questions.

read = READ
laser = LASER
marks = MARKS
board = BOARD
dayIsClosed = DAY CLOSED – no calls go out
rodMustRead = ROD MUST READ
digTo = Dig to

# $dev (text) the signed difference to the target
# $time (text) the time of day, such as 10:05
lastReading = last { $dev } at { $time }
noReading = no reading yet

# $was (text) the verdict before, with its difference
wasBefore = was { $was } before the change: shoot again

# $was (text) the verdict before, with its difference
# $setUp (text) the set-up's name as people read it, such as SETUP-1
wasDoubted = was { $was }, { $setUp } in doubt: shoot again

# $was (text) the verdict before, with its difference
# $why (text) why, in words
wasVoid = was { $was }, but { $why }: shoot again
shootAgainShort = AGAIN

# $why (text) why, in words
keptSpot = Kept as a spot elevation, no call goes out. { $why }
keptPaper = From paper: kept, no call goes out.
keepKey = KEEP IT
hubTells = The hub works the call out.

# $mark (text) the mark's name
byHand-show = { $mark }: show
byHand-nothing = nothing to show
byHand-noLink = by hand:

# $signals (text) the hand signals, by name
byHand-signal = Signal { $signals }

# $signals (text) the hand signals, by name
# $whom (text) what was agreed, and with whom
byHand-agreed = Signal { $signals }, agreed: { $whom }

byHand-notAgreed = No hand signal for it was agreed today: eye contact first.
byHand-stopped = STOP stands: show nothing before it is lifted.

nearStep = Near a step. Which side is the rod on?
before = BEFORE
after = AFTER
previous = Mark before
next = Next mark
nextMark = NEXT MARK
readAgain = READ AGAIN
send = SEND
erase = Erase
withdraw = WITHDRAW
nod = THE CAB NODDED
restate = WRONG NUMBER

# $time (text) the time of day, such as 10:05
# $by (text) who read the rod
fromPaper = FROM PAPER { $time } { $by }
restating = Type what it was. Both stay in the log.
eyeKey = BY EYE
plan = PLAN
section = SECTION
more = MORE
verdictShort-too_close_high = ?
verdictShort-too_close_low = ?
edge = EDGE

# $mark (text) the mark's name
edgeAt = Edge of the cut at { $mark }

# $machine (text) the machine's name
eyeTo = By eye, to { $machine }
ready = Type the rod
noSetUp = No laser is set up. Press LASER.

# $id (text) the set-up's name as people read it, such as SETUP-1
setUpUnproven = { $id }: second benchmark owed

# $id (text) the set-up's name as people read it, such as SETUP-1
setUpDoubt = { $id } IN DOUBT

# $id (text) the set-up's name as people read it, such as SETUP-1
# $time (text) how long ago, such as 4 min
setUpChecked = { $id } check { $time } ago

# $id (text) the set-up's name as people read it, such as SETUP-1
setUpNoCheck = { $id } · not checked
options = With what
rod = Rod
receiver = RECEIVER

# $mark (text) the mark's name
# $time (text) how long ago, such as 4 min
placeSaid = near { $mark }, said { $time } ago
receiverAsk = The ground here is

# $machine (text) the machine's name
insideKeepOut = Inside the keep-out of { $machine }.

# $machine (text) the machine's name
# $time (text) how long it has waited, such as 4 min
waitsForLook = { $machine } asks for a look, { $time }

# $machine (text) the machine's name
# $why (text) why, in words
cantSaid = { $machine } CAN'T: { $why }

# $machine (text) the machine's name
# $by (text) who pressed STOP
stopped = { $machine } STOPPED by { $by }

# $machine (text) the machine's name
noSound = { $machine } HAS NO SOUND: its screen waits for a tap

# $machine (text) the machine's name
noScreen = { $machine } has no screen. Use hands.

# $machine (text) the machine's name
screenHidden = { $machine }: screen hidden. Use hands.

# $machine (text) the machine's name
screenLost = { $machine }: link lost. Use hands.

# $machine (text) the machine's name
# $setUp (text) the set-up's name as people read it, such as SETUP-1
paused = { $machine } paused: { $setUp } in doubt

# $machine (text) the machine's name
# $target (text) the target's name
mustSee = { $machine } has not seen the new { $target }

outcome-needsRuling = Two shots, too close to call on the low side. The supervisor rules.

# $by (text) who has the newer reading, or the machine
outcome-late = { $by } has a newer reading. Kept in the log, not shown.
outcome-dayClosed = The day is closed. Kept in the log, not shown.

# $mark (text) the mark's name
outcome-newerCall = The machine was told about { $mark } after this was read. Kept in the log, not shown. Read it again.
outcome-tooOld = Sent too long after it was read. Kept in the log, not shown. Read it again.

# $elevation (text) the elevation with its unit
# $why (text) why, in words
outcome-spot = { $elevation } kept as a spot elevation. { $why }
outcome-paper = Kept from paper. No call was sent.
outcome-noChange = Kept in the log.

spot-no_target = The mark has no target.
spot-no_machine = No machine is assigned here.
spot-set_up_in_doubt = The laser is in doubt: two benchmarks must agree first.
spot-set_up_closed = That set-up is taken down.
spot-query_open = The engineer was asked: work here waits for the answer.
spot-face_left = Everybody had to get away from the face over it: the competent person inspects it first.
spot-daylight_over = The face would come to daylight over a line: the supervisor gives the reason.
spot-not_located = No locate ticket covers it: have it located, or the supervisor gives the reason.
spot-ticket_lapsed = The locate ticket does not hold today: ask for a new one.
spot-line_struck = A line was struck near it: its owner sees it first, the supervisor gives the reason.
spot-paint_gone = The paint of a buried line is gone: have it marked again.
spot-crossing_too_near = The trench crosses a buried line too near: ask the engineer.

rodProblem-empty = Type the rod first.
rodProblem-not_a_number = That is not a rod reading. Type it again.
rodProblem-too_long = Longer than this rod. Read it again, or pick the right rod.
rodProblem-inches = Inches go from 0 to 11. Type it again.
rodProblem-negative = A rod reads no less than 0. Read it again.

feetKey = ft
inchKey = in
verdictShort-high = HIGH
verdictShort-low = LOW
verdictShort-on = ON

## later()
## Comes with the scripts of what is seldom shown: a page that is fetched first can't name it.

list = LIST

# $site (text) the site's name
planOf = Plan of { $site }
control = LEVELS · TESTS · TYPE AGAIN
planNote = A machine stands where somebody last said. Nothing senses it.
closer = Closer
farther = Farther
westward = To the west
eastward = To the east
northward = To the north
southward = To the south
allOfIt = ALL


# $target (text) the target's name
profileOf = Profile of { $target }

# $target (text) the target's name
sectionOf = Section of { $target }
sectionNote = Square to the toe: → feet out, ↑ feet up.

# $times (text) how many times larger
profileNote = Stations and elevations in feet; heights drawn { $times } times larger.

shots-on_the_rod = ON THE ROD
shots-above_laser = LASER TOO LOW
shots-rod_too_short = ROD TOO SHORT

sums = Sums of layout
sumsKey = SUMS
paint = PAINT

# $mark (text) the mark's name
paintOf = Paint of { $mark }

# $state (text) what paintStates says
# $generation (number) how often the mark was laid
paintState = { $state } · { $generation }

paintStates-laid = laid
paintStates-checked = checked
paintStates-scraped = GONE

whichMarks = Which marks

# $target (text) the target's name
allOf = All of { $target }
laidFrom = Laid from

parents-hub = HUB
parents-string = STRING
parents-control = CONTROL
parents-ties = ITS TIES

ties = TIES

# $mark (text) the mark's name
tiesOf = Ties of { $mark }

# $machine (text) the machine's name
# $mark (text) the mark's name
tiesFirst = { $machine } takes { $mark } next: TIES FIRST

# $degrees (number) degrees
meetAt = meet at { $degrees }°
weakTies = WEAK
noTies = no two points within a tape
heldAt = Tape held at

# $point (text) the point's name
tapeLevel = Tape from { $point }, level, ft
checkMark = MEASURED AGAIN
paintGone = GONE
apartFeet = Apart, ft

# $line (text) the line's name
edgeLies = The edge lies on this side of { $line }
tapedFrom = Taped from

# $line (text) the line's name
stringOn = on { $line }

# $mark (text) the mark's name
# $line (text) the line's name
edgeOfMark = Seen from { $mark }, is the edge toward { $line } or away from it?
shortOfMark = AWAY
pastMark = TOWARD IT
insideLine = INSIDE
overLine = OVER
line = Line
tapeFeet = Tape, ft
rodWord = ROD
mode = Read by
careTitle = How finely

care-fine = FINE
care-coarse = USUAL
care-by_eye = ROD BY EYE
care-muddy = MUDDY

machine = Machine
setUp = Set-up

# $machine (text) the machine's name
# $mark (text) the mark's name
standsHere = { $machine } STANDS AT { $mark }

# $machine (text) the machine's name
moved = { $machine } HAS MOVED
placeNotSaid = place not said
search = Find a mark
near = NEAR
tools = PAINT · TIES · SUMS · WORK
shootAgainFilter = SHOOT AGAIN
noMarkFound = No mark has that in its name.
readIt = READ IT AGAIN

# $text (text) the value as typed
rightAs = { $text } is right

# $text (text) the value as typed
was = It was { $text }

# $ft (number) feet
# $inches (number) inches
feetInches = { $ft } ft { $inches } in

asks-which_way = It was HIGH here and now it is LOW. Which way is the ground?

# $typed (text) the value as typed
# $by (text) by how much, with its unit
asks-ground_rose = { $typed } would mean the ground rose { $by }.

# $by (text) by how much, with its unit
asks-repeat_off = That is { $by } off the reading before. Has the laser moved?

# $mark (text) the mark's name
asks-other_mark = That fits { $mark } better. Where is the rod?

# $typed (text) the value as typed
# $by (text) by how much, with its unit
asks-far_below = { $typed } would be { $by } below the target.

# $by (text) by how much, with its unit
asks-far_from_grade = That is { $by } from the target. Right mark, right rod?

# $assigned (text) the machine that the mark belongs to
asks-other_machine = This mark belongs to { $assigned }. Call it all the same?

# $spread (text) how far the shots differ, with its unit
asks-which_is_right = The shots differ by { $spread }. Is this one right?
