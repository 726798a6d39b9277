### later().account
### English, the reference: what is counted: hours, loads, gravel, tests, aim.

spot = One reading stands for, square feet
loads = Loads

way-out = OUT
way-in = IN

how = How was it measured?
takeBack = TAKE BACK

# $yards (text) cubic yards
low = too deep by { $yards } cy
order = ORDER
allMachines = All machines

# $percent (text) per cent
within = { $percent } % land within the tolerance
next = Who is needed next
nobodyNext = Nobody is needed in the next ten minutes.

# $machine (text) the machine's name
# $time (text) the time of day, such as 10:05
waits = { $machine } waits since { $time }

# $machine (text) the machine's name
# $mark (text) the mark's name
# $time (text) the time of day, such as 10:05
lookBy = { $machine } at { $mark }: look by { $time }

# $mark (text) the mark's name
# $at (text) the time of day, such as 10:05
# $from (text) from which time of day
# $to (text) until which time of day
arrives = { $mark } at grade about { $at } ({ $from } to { $to })

# $mark (text) the mark's name
# $minutes (text) minutes of digging
arrivesHeld = { $mark }: { $minutes } min of digging left; it stands still
borrowed = pace of its other marks
later = later
tests = Soil tests

standing-passes = PASS
standing-fails = FAIL
standing-void = VOID

patches = Patches

# $size (text) length by width, feet
# $cy (text) cubic yards
patchLine = { $size } ft, { $cy } cy

step-needed = NEEDED
step-filled = FILLED
step-compacted = COMPACTED
step-tested = TESTED
step-done = DONE

# $has (number) how many lifts are rammed
# $of (number) of how many
liftsOf = { $has } of { $of } lifts rammed
lifts = Lifts rammed
work = WORK
waitTitle = What does it wait for?

wait-truck = TRUCKS
wait-attachment = ATTACHMENT
wait-broken = BROKEN
wait-parked = PARKED
wait-other = OTHER

again = WORKS AGAIN
