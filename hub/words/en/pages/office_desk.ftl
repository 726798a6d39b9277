### office().desk
### English, the reference: the supervisor's desk: its plan, what its signs mean, and the card of what was pressed.

signs-unread = not read
signs-spot = no grade
signs-on = on grade
signs-high = high
signs-low = low
signs-too_close = too close
signs-again = shoot again
legend = Signs

# $n (number) how many names
noRoom = { $n ->
        [one] 1 name has no room
       *[other] { $n } names have no room
    }: come closer.

# $n (number) how many marks
outOfSight = { $n ->
        [one] 1 mark lies out of sight.
       *[other] { $n } marks lie out of sight.
    }

# $n (number) how many marks are counted in one place
# $ids (text) their names, parted by commas
countOf = { $n ->
        [one] 1 mark more: { $ids }
       *[other] { $n } marks more: { $ids }
    }. Come closer.

# $feet (text) feet
bar = { $feet } ft

planKeys = Wheel or + and −: closer, farther. Drag or arrows: along. Press a thing: its card.
readings = Readings
calls = Calls
photos = Photos
history = History
marksOf = Marks
stack = Target

# $station (text) feet along the line
station = station { $station } ft

# $feet (text) feet
rightOf = { $feet } ft right

# $feet (text) feet
leftOf = { $feet } ft left

# $east (text) the coordinate to the east, feet
# $north (text) the coordinate to the north, feet
place = E { $east } N { $north } ft

# $name (text) the layer's name
# $feet (text) its thickness, feet
layer = { $name } { $feet } ft

# $high (text) feet that are allowed high
# $low (text) feet that are allowed low
allowed = allowed +{ $high } / −{ $low } ft

# $feet (text) the signed aim, feet
aim = aim { $feet } ft

# $station (text) the step's station, feet
# $before (text) what to dig to before it, feet
# $after (text) what to dig to after it, feet
nearStep = near the step at { $station }: { $before } before, { $after } after
noTarget = no target
noGrade = no grade here

# $by (text) who said where it stands
# $at (text) the time of day, such as 10:05
stoodBy = where { $by } said at { $at }; nothing senses it
nobodySaid = Nobody has said where it stands.

# $feet (text) feet
keepOut = keep-out { $feet } ft

# $reach (text) feet to the teeth
# $tail (text) feet to the back of the house
reach = reach { $reach } ft, tail { $tail } ft

lineKinds-property = property line
lineKinds-easement = easement
lineKinds-setback = setback
lineKinds-limit_of_work = limit of work
noCross = nobody digs beyond it

keepSide-left = work stays on the left, looking along it
keepSide-right = work stays on the right, looking along it

# $feet (text) feet
doubt = its place is known to ± { $feet } ft

# $feet (text) feet
lowest = lowest { $feet } ft over the ground
# $kv (text) kilovolts
voltage = { $kv } kV

# $kv (text) kilovolts
voltageAtMost = at most { $kv } kV
voltageUnknown = voltage not known

# $feet (text) feet
bottom = bottom at { $feet } ft

# $feet (text) feet
across = { $feet } ft across

# $feet (text) feet
elevation = elevation { $feet } ft

kinds-mark = mark
kinds-machine = machine
kinds-line = line
kinds-buried = buried line
kinds-overhead = line overhead
kinds-face = face or trench
kinds-ticket = locate ticket
kinds-pile = pile
kinds-structure = footing or wall
kinds-benchmark = benchmark
kinds-target = target

# $n (number) how many phones
phones = PHONES { $n }
start = START CHECKS
lastReadings = LAST READINGS
proven = NOT PROVEN

noStop = No STOP stands.

drawPlace = PLACE IT ON THE PLAN
drawLine = DRAW ON THE PLAN
undo = UNDO
pressThere = Press where it is. A handle is dragged, or moved by arrows.
pickOne = Press a thing in the list or on the plan, or add one. Nothing is in force before you have looked at it and said why.

# $id (text) the thing's name
# $n (number) which of its places
handle = { $id }, place { $n }: drag it, or move it by arrows

# $n (number) how many triangles
surfaceOf = The file has a surface of { $n } triangles.
makeTarget = MAKE A TARGET OF IT
leftOutRow = LEFT OUT

fileSays = File, ft
targetSays = Dig-to there, ft
apart = Apart, ft
elevationOf = Elevation
