### t().kept
### English, the reference: what was said and not taken: a STOP, a reading that waits, a page without a hub, a key that can't be pressed yet.

stopWaits = YOUR STOP IS NOT TAKEN – SHOUT – USE HANDS
stopNobody = NOBODY HEARD YOUR STOP – SHOUT – USE HANDS
stopNobodyWhy = The hub does not know this phone. Scan a code, then press STOP again.
stopSeen = IT STANDS STILL
onlyInMemory = This phone can't keep anything. Leave this page open: what is not sent goes with it.

# $what (text) what was said on the phone, in short
# $age (text) how old it is, such as 4 min
ask = NOT SENT, { $age } old: { $what }. Does it still hold?
drop = DROP
dropped = DROPPED. No cab was told.
wentOut = It had gone out before the link broke. It is taken back from the cab.

# $n (number) how many
left =
    { $n ->
        [one] 1 WORD OF THIS PHONE NOT SENT
       *[other] { $n } WORDS OF THIS PHONE NOT SENT
    }

# $mark (text) the mark's name
leaving = { $mark }: not settled
leavingQuestion = The question about this reading has no answer. Left like this, the cab is told nothing.
leavingWrong = A number was called wrong and the right one is not typed. The cab has no number for this mark.
stayHere = STAY AT THIS MARK
leaveIt = LEAVE IT OPEN
noHub = NO LINK TO THE HUB
stayOut = STAY OUT – USE HANDS
watchGround = WATCH THE GROUND PERSON

# $time (text) the time of day, such as 10:05
lastKnown = Last known at { $time }:

# $who (text) the person's name
# $machine (text) the machine's name
wasIn = { $who } IN AT { $machine }

# $machine (text) the machine's name
youWereIn = YOU WERE IN AT { $machine } – GET EYES OR GET OUT
nobodyKnown = Nobody had said IN. That may have changed.

# $machine (text) the machine's name
wasStopped = STOP stood for { $machine }
asking = This page asks the hub again and again.

owed-something = Something above is missing
owed-side = Press BEFORE or AFTER
owed-mark = Pick a mark
owed-setUp = No laser set-up: see LASER
owed-noReading = Nothing was taken that could be wrong
owed-gotIt = GOT IT was pressed

## later()
## Comes with the scripts of what is seldom shown: a page that is fetched first can't name it.

owed-rod = Type the rod
owed-number = Type the number
owed-place = Say where the rod stands
owed-overLine = Press which side of the line
owed-line = Pick the line
owed-machine = Pick the machine
owed-stop = Press STOP among the signals
owed-words = Type the words
owed-name = Type the name
owed-sizes = Type all three as feet
owed-time = Type the time
owed-material = Type what is in the truck
owed-yards = Yards: digits alone, or nothing
owed-wait = Being sent
