### t().cuts
### English, the reference: faces and what is buried.

also-water = Nobody works where water stands or comes in before precautions are taken.

leave = GET AWAY FROM THE FACE

# $name (text) the name of the face, trench, structure or line
# $feet (text) feet
leaveStrip = { $name }: nobody within { $feet } ft of its toe

# $pins (text) the names of the pair of pins
leaveWhy-pins = Pins { $pins } open too fast
leaveWhy-slough = It came down
leaveWhy-said = Somebody says that it moves

leaveDo = Track back out of reach of it. Then press.
away = I AM AWAY

kinds-gas = GAS
kinds-electric = POWER
kinds-communication = PHONE, CABLE
kinds-water = WATER
kinds-reclaimed = RECLAIMED
kinds-sewer = SEWER
kinds-unknown = UNKNOWN

# $who (text) the person's name
callOwner = Call: { $who }
handDig = HAND DIG

# $kind (text) the kind of line, such as GAS
# $from (text) from which station
# $to (text) to which station
handDigAt = { $kind }: station { $from } to { $to }

# $why (text) what spot says
held = NO CALL. { $why }

depthRules-egress = LADDER
depthRules-protection = PROTECTION
depthRules-engineer = ENGINEER

# $limit (text) the depth at which it is owed, feet
# $left (text) feet left
depthStates-ahead = owed at { $limit } ft, { $left } ft left on the way down

# $limit (text) the depth at which it is owed, feet
# $left (text) feet left
depthStates-next_tenth = the next tenth: { $left } ft left to { $limit } ft

# $limit (text) the depth at which it is owed, feet
depthStates-owed = OWED: past { $limit } ft

# $at (text) the time of day, with its date when it is another day's
rains = IT RAINS, said at { $at }

## later()
## Comes with the scripts of what is seldom shown: a page that is fetched first can't name it.

face = FACE
pipes = BURIED
faces = Cut faces and trenches
caution = A reminder: it says which rule or number is not met. The competent person's judgement, the engineer and the code come first.
oneCallFirst = The one-call locate comes before anything drawn here; a line's whole depth is hot until it is bared by hand.

also-falling_loads = Nobody under a bucket or a load, or beside a truck that is loaded.

# $who (text) the person's name
competent = Competent person: { $who }

# $name (text) the soil class, such as A
classIs = CLASS { $name }
notClassed = NOT CLASSED: counts as C

classes-rock = ROCK
classes-a = A
classes-b = B
classes-c = C

# $picked (text) the class that was picked
# $why (text) what lowered it, such as water
loweredFrom = picked { $picked }, lowered by { $why }

lowered-material = the soil itself
lowered-strength = its strength
lowered-thumb = the thumb
lowered-cracks = cracks
lowered-vibration = vibration
lowered-disturbed = being dug before
lowered-water = water
lowered-dip = layers that dip in

# $feet (text) feet
height = { $feet } ft high at most

# $runs (text) how far back for 1 up
slope = { $runs } to 1

# $run (text) how far back for 1 up
# $top (text) the elevation of its top, feet
upTo = { $run } to 1 up to { $top } ft

# $run (text) how far back for 1 up
above = { $run } to 1 above
designed = the engineer's own design

# $who (text) the person's name
# $at (text) the time of day, such as 10:05
signed = Inspected by { $who } at { $at }

# $why (text) what dueWhy says
due = INSPECTION DUE: { $why }

# $why (text) what dueWhy says
# $at (text) the time of day, such as 10:05
overdue = INSPECTION OVERDUE: { $why }; worked under since { $at }

dueWhy-new_day = none today
dueWhy-seen = something was seen
dueWhy-left = everybody had to get away from the face
dueWhy-rain = rain
dueWhy-water = water was pumped out

# $machines (text) the machines' names, parted by commas
mustLeave = Not away yet: { $machines }

# $pins (text) the names of the pair of pins
# $apart (text) feet between the pins
# $rate (text) feet an hour
pinsNow = { $pins } { $apart } ft, { $rate } ft an hour

# $pins (text) the names of the pair of pins
pinsNone = { $pins } not taped yet

pinStates-still = STILL
pinStates-watch = WATCH
pinStates-leave = GET AWAY

# $mark (text) the mark's name
# $run (text) how far back for 1 up
# $degrees (text) degrees
crest = At { $mark }: { $run } to 1, { $degrees }°

# $back (text) feet that the crest stands back
# $yards (text) cubic yards
crestBack = crest back { $back } ft; { $yards } cy a foot hang over

# $rises (text) feet up, bench by bench
# $treads (text) feet that each tread is wide at least
benches = or benches from the bottom: { $rises } ft up, treads of at least { $treads } ft

# $n (number) how many
# $travel (text) feet that nobody goes farther than
ladders = { $n } { $n ->
        [one] ladder
       *[other] ladders
    }, so that nobody goes farther than { $travel } ft
crestFlat = as flat as its class asks
daylight = DAYLIGHT

# $line (text) the line's name
# $feet (text) feet
lineOver = over { $line } by { $feet } ft

# $line (text) the line's name
# $feet (text) feet
lineIn = { $line }: { $feet } ft inside

# $from (text) from which station
# $to (text) to which station
overAt = toe station { $from } to { $to }
highEngineer = Higher than the tables go: an engineer designs it

# $n (number) how many
missing = { $n } { $n ->
        [one] place has
       *[other] places have
    } no daylight or no known ground

# $name (text) the name of the face, trench, structure or line
# $feet (text) feet
structure = { $name }: { $feet } ft of room

# $feet (text) feet
influence = toe { $feet } ft below its 1 to 1 line: ask the engineer

seenAt-water = WATER
seenAt-crack = CRACK
seenAt-rain = RAIN
seenAt-vibration = SHAKING
seenAt-load = LOAD AT CREST
seenAt-trimmed = TRIMMED

cameDown = CAME DOWN

# $what (text) what was seen, such as WATER
# $who (text) the person's name
# $at (text) the time of day, such as 10:05
seenLine = { $what } · { $who } · { $at }
loadBack = Back from the crest, ft

slough-told = Every cab and phone says GET AWAY FROM THE FACE. When nobody is under it: how much came down?
slough-length = Along the face, ft
slough-height = High, ft
slough-back = Back, ft
slough-mark = Nearest mark

pins = PINS
pinsTape = Tape, ft
inspect = INSPECT

# $name (text) the name of the face, trench, structure or line
inspectTitle = Inspection of { $name }
pickClass = Soil class you pick
seen = What you see: dry or wet, cracks, bulges, loads
byHand = What your hand finds: thumb, thread, penetrometer
strength = Pocket penetrometer, tsf
thumb = Thumb

thumbs-great_effort = DENTS, HARD TO PUSH IN
thumbs-some_effort = GOES IN WITH EFFORT
thumbs-easily = GOES IN WITH EASE

material = Soil

materials-stable_rock = STABLE ROCK
materials-loose_rock = LOOSE ROCK
materials-cemented = CEMENTED
materials-cohesive = CLAY
materials-silt_or_angular = SILT, SANDY LOAM
materials-granular = SAND, GRAVEL

found = Found

finds-cracks = CRACKS
finds-vibration = SHAKING
finds-disturbed = DUG BEFORE
finds-water = WATER

release = Why people go back under it
sign = SIGN
signRetype = TYPE SOIL
why = Why? It goes into the log.
onlyLowers = It classifies no soil: the competent person picks, finds only lower the class.

# $name (text) the name of the face, trench, structure or line
retypeTitle = Soil of { $name }

utilities = Buried lines

depthUnknown = DEPTH UNKNOWN: bare it by hand, its whole depth is hot

# $top (text) the elevation of its top, feet
# $bottom (text) elevation of the line's bottom, feet
# $who (text) the person's name
bared = top { $top }, bottom { $bottom } ft · { $who }

# $zone (text) the name of the face or trench
# $from (text) from which station
# $to (text) to which station
crossing = { $zone }: by hand from station { $from } to { $to }

# $clear (text) feet between the two
# $need (text) feet that are needed
clear = { $clear } ft apart, needs { $need } ft
tooNear = TOO NEAR: ask the engineer
paintGone = PAINT GONE
paintAgain = PAINTED AGAIN
bare = BARED

# $name (text) the name of the face, trench, structure or line
bareTitle = { $name } bared by hand
topFeet = Elevation of its top, ft
sizeInches = Outside across, in

# $id (text) the ticket's number
# $to (text) its last day
# $days (number) how many days
ticketHolds = { $id } holds to { $to }, { $days } { $days ->
        [one] day more
       *[other] days more
    }

# $id (text) the ticket's number
# $to (text) its last day
ticketLapsed = { $id } DOES NOT HOLD TODAY (to { $to }): ask for a new one

# $who (text) the person's name
# $at (text) the time of day, such as 10:05
ticketChecked = looked at by { $who }, { $at }
ticketNotChecked = NOT LOOKED AT TODAY

# $kinds (text) the kinds of line that nobody answered for
ticketSilent = no answer: { $kinds }

pumpedOut = PUMPED OUT
rainStopped = RAIN STOPPED
toldSince = Something was said of this face, of rain or of water since this form was opened. Look again.
lookedAgain = I LOOKED AGAIN
also-mobile_equipment = Where a cab can't see the edge: barricades, signals or stop logs.
also-atmosphere = Could the air be bad? Tested before anybody goes in.
also-edge = An edge that is hard to see is railed or barricaded.
