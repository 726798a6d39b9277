### t().crew
### English, the reference: how a day begins, what is near a machine, spotters, and the battery in the cab.

start-signals-stop = STOP
start-signals-lower = LOWER
start-signals-raise = RAISE
start-signals-swing = SWING
start-signals-travel = TRAVEL
start-signals-so_much = SO MUCH
start-signals-grade = GRADE

# $other (text) the other machine
# $apart (text) feet between the two
# $needs (text) feet that are needed
near-can_meet = { $other } { $apart } FT AWAY – BOOMS CAN MEET UNDER { $needs }

# $at (text) what the tail would pinch somebody against, or where
# $apart (text) feet between the tail and what it passes
near-tail = TAIL PINCHES AT { $at } – { $apart } FT

# $zone (text) the name of the face or trench
# $inside (text) feet inside
near-on_slope = TRACKS { $inside } FT INSIDE THE SLOPE OF { $zone } – EDGE NOT SEEN: SIGNALS OR STOP LOGS – ASK THE COMPETENT PERSON

# $line (text) the line's name
# $clearance (text) feet to stay off
near-overhead = LINE OVERHEAD: { $line } – STAY { $clearance } FT OFF
near-spotterNeeded = SPOTTER NEEDED
near-ownerFirst = ITS OWNER SAYS THE VOLTAGE AND THE DISTANCE, THE TABLE COMES AFTER

asLastSaid = From where it was last said to stand. What nobody drew or said is not here.

# $machine (text) the machine's name
# $ft (text) feet
beyondReach = { $ft } ft beyond the reach of { $machine }. Has it moved? Say where it stands.

zones-pinch = BETWEEN HOUSE AND TRACKS
zones-tail = IN THE TAIL SWING
zones-reach = IN YOUR REACH, MAYBE ON YOUR BLIND SIDE
zones-margin = NEXT TO YOUR REACH, MAYBE ON YOUR BLIND SIDE

# $side (text) the side by the compass, such as NORTH
# $other (text) the other machine
keepOutOf = KEEP OUT OF THE { $side } – { $other }
agree = AGREED

# $side (text) the side by the compass, such as NORTH
# $other (text) the other machine
agreedWith = AGREED WITH { $other } – KEEP OUT OF THE { $side }

# $other (text) the other machine
# $side (text) the side by the compass, such as NORTH
waitsFor = KEEP OUT OF THE { $side } – { $other } HAS NOT AGREED YET

compass-north = NORTH
compass-north_east = NORTH-EAST
compass-east = EAST
compass-south_east = SOUTH-EAST
compass-south = SOUTH
compass-south_west = SOUTH-WEST
compass-west = WEST
compass-north_west = NORTH-WEST

# $who (text) the person's name
spotter = SPOTTER { $who }

# $who (text) the person's name
spotterLost = SPOTTER { $who } – NO LINK – STAND STILL, GET EYES

# $machine (text) the machine's name
youSpot = YOU SPOT FOR { $machine } – NOTHING ELSE

# $mark (text) the mark's name
standAt = I STAND AT { $mark }

# $mark (text) the mark's name
standStill = STILL NEAR { $mark }
standElse = ELSEWHERE
standTitle = WHERE I STAND

# $machine (text) the machine's name
batteryTold = { $machine } BATTERY LOW – HANDS SOON

## later()
## Comes with the scripts of what is seldom shown: a page that is fetched first can't name it.

start-title = START CHECKS

# $said (number) how many start checks are said
# $of (number) of how many
start-notReady = DAY NOT READY · START CHECKS { $said } OF { $of }

# $by (text) who said that the day is ready
# $time (text) the time of day, such as 10:05
start-ready = DAY READY · { $by } { $time }

# $why (text) why, in words
start-without = without it: { $why }
start-say = SAY

# $who (text) the person's name
# $date (text) the date
start-before = { $who } saw, typed on { $date }:
start-seenSame = I LOOKED NOW: THE SAME
start-different = Or say what is different:
start-checks-hat_and_vest = HAT AND VEST
start-checks-hand_signals = HAND SIGNALS
start-checks-first_aid = FIRST AID
start-checks-overhead_lines = OVERHEAD LINES
start-checks-locate_tickets = LOCATE TICKETS
start-checks-laser = LASER AND RODS
start-checks-ways_out = LADDERS AND BARRICADES
start-asks-hat_and_vest = Who was looked at?
start-asks-hand_signals = Shown with whom?
start-asks-first_aid = Where is it, and which is the way to it?
start-asks-overhead_lines = Which hang over the site, and how low?
start-asks-locate_tickets = Which, until when?
start-asks-laser = When were they last tested?
start-asks-ways_out = Where do they stand?
start-signalsAsk = Agreed with the operators
overheadLine = OVERHEAD

# $machine (text) the machine's name
spotFor = I SPOT FOR { $machine }

# $machine (text) the machine's name
spotNoMore = I SPOT FOR { $machine } NO MORE
standPick = Nearest to which mark?
standWhy = From it the phones know who is near this machine. Pressed amiss: say it again.
standMoved = I MOVED – PLACE NOT SAID
batteryLow = BATTERY LOW
batteryCharges = BATTERY CHARGES
