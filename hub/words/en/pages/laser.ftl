### later()
### English, the reference: laser set-ups, their proof and their checks.

setUpNew = SET UP A LASER
whichLaser = Which laser?
whichBenchmark = Which benchmark is under the rod?
whichRod = Which rod?
slopeAs = The same figures as on the laser. Three benchmarks, not in one line with it, prove it.
slopedLaser = SLOPED
slopedNote = Three benchmarks prove it
riseEast = Rise to the east, % (falls: −)
riseNorth = Rise to the north, % (falls: −)
goOn = GO ON
slopedPlace = A sloped laser's height depends on where it stands.

# $east (text) the rise to the east, per cent
# $north (text) the rise to the north, per cent
sloped = sloped { $east } east, { $north } north
whereStands = Where does the laser stand?

# $benchmark (text) the benchmark's name
rodOnBenchmark = Rod on { $benchmark }
secondOwed = Now shoot a second benchmark. No calls before that.
checkShot = CHECK SHOT
secondBenchmark = SECOND BENCHMARK
bumped = IT WAS BUMPED
takeDown = TAKE DOWN
restateSetUp = RESTATE BACKSIGHT
levelAgain = LEVEL AGAIN

levelSteps-1 = Rod on any firm point: read it now.
levelSteps-2 = Change the laser's height by a tenth or more. Rod on the benchmark.
levelSteps-3 = Rod on the same point again.

useOne = USE ONE BENCHMARK
useOneWhy = Every call will say ONE BENCHMARK.
hi = HI

proofs-unproven = Second benchmark owed
proofs-unproven_slope = Sloped: two more benchmarks owed, not in one line with it

# $agreed (text) the benchmarks that agree so far, parted by commas
proofs-unproven_slope_so_far = Sloped: two more benchmarks owed, not in one line with it. So far: { $agreed }
proofs-across_the_slope = Proven across its slope by two benchmarks
proofs-second_benchmark = Proven by a second benchmark
proofs-two_benchmarks = Proven again by two benchmarks
proofs-levelled_again = Levelled twice on one benchmark
proofs-one_benchmark = ONE BENCHMARK

# $benchmark (text) the benchmark's name
# $by (text) by how much, with its unit
doubtCheck = Check on { $benchmark } was off by { $by }

# $mark (text) the mark's name
# $by (text) by how much, with its unit
doubtBenchmark = { $mark } was corrected by { $by }: restate the set-up

# $by (text) who saw it move
doubtBumped = { $by } saw it move
doubtDo = No calls until two benchmarks agree.

# $list (text) names, parted by commas
agreed = Agreed since: { $list }

# $n (number) how many
sinceCheck = { $n } { $n ->
        [one] reading
       *[other] readings
    } since the last check

due-bumped = CHECK THE LASER: it was bumped
due-drift = CHECK THE LASER: repeats do not agree
due-overdue = CHECK THE LASER: calls now say that it was not checked
due-time = Check due: the interval has passed
due-readings = Check due: 25 readings
due-temperature = Check due: the temperature has changed
due-restart = Check due: work starts again

# $setUp (text) the set-up's name as people read it, such as SETUP-1
# $from (text) from which time of day
# $to (text) until which time of day
# $by (text) by how much, with its unit
# $n (number) how many
suspectHead = { $setUp } { $from }–{ $to }: off by { $by }, { $n } { $n ->
        [one] reading
       *[other] readings
    } in doubt

# $setUp (text) the set-up's name as people read it, such as SETUP-1
# $from (text) from which time of day
# $n (number) how many
suspectOpen = { $setUp } since { $from }: { $n } { $n ->
        [one] reading
       *[other] readings
    } UNPROVEN, no benchmark shot since
reshoot = RE-SHOOT
standEither = Stand either way

standings-stands = stands
standings-earlier_stands = what was accepted before stands
standings-shoot_again = may be wrong
standings-unproven = unproven

# $booked (text) what was booked, a difference in feet
# $moved (text) what it would be had the laser moved, a difference in feet
ifMoved = { $booked }, or { $moved } if the laser had moved

# $by (text) by how much, with its unit
checked-good = Good. Off by { $by }.

# $by (text) by how much, with its unit
checked-again = Off by { $by }. Shoot it again.

# $by (text) by how much, with its unit
checked-failed = Off by { $by }. The laser is in doubt.

usable = The set-up takes readings now.

# $id (text) the set-up's name as people read it, such as SETUP-1
proven = { $id } is proven. It takes readings now.
slipsAsk = Was it one of these? Nothing is changed by itself.

# $used (text) the benchmark that was picked
# $perhaps (text) what it may have been instead
slips-other_benchmark = That is { $used } less { $perhaps }. Which is the rod on?
slips-whole_foot = A whole foot: read the foot mark again.
slips-tenth = A tenth: read the tenth again.

# $typed (text) the value as typed
# $perhaps (text) what it may have been instead
slips-digits_swapped = { $typed } typed for { $perhaps }?
slips-bracket = The bracket: is it on the rod, is it counted?
slips-rod_section = A rod section: is the lower one all the way out?

# $benchmark (text) the benchmark's name
# $reads (text) the rod value that would show it
slips-laser_moved = The laser moved? Shoot { $benchmark } again: { $reads } says so.

# $typed (text) the value as typed
# $perhaps (text) what it may have been instead
slips-inches_as_tenths = { $typed }: inches typed as tenths? { $perhaps }?
