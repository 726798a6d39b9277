### control()
### English, the reference: CONTROL: levels, laser tests, targets typed again.

which = What is to be done?

tasks-type_again = TYPE AGAIN: a target's elevations, by a second person
tasks-levels = LEVELS: over turning points
tasks-turned = LASER TEST: turned by quarters
tasks-two_peg = LASER TEST: two pegs
tasks-compare = TWO LASERS on one point

send = SEND
target = Target
laser = Laser
allTyped = Every elevation that was typed has been typed by a second person.
unseen = Type from the drawing, not from the board. What differs is kept, both values; nothing is changed.
levelsNote = Book each set-up as in the field book. The line closes on a benchmark; beyond its allowance nothing is adjusted.
from = From benchmark
to = Closes on benchmark

# $number (number) its number
setUp = Set-up { $number }

# $point (text) the point's name
behind = Backsight: rod on { $point }
behindUnnamed = Backsight: rod on the point behind

# $point (text) the point's name
ahead = Foresight: rod on { $point }
aheadUnnamed = Foresight: rod on the point ahead
point = Point
oneMore = ONE MORE SET-UP
oneLess = ONE LESS

notes-turned = One rod, 100 ft or more away. Read; turn the laser half round and read again; the same for its other axis.
notes-two_peg = Read both pegs from the middle between them, then both from near peg A.

read-distance = Laser to rod, feet
read-first = First axis toward the rod
read-first_turned = First axis, turned half round
read-second = Second axis toward the rod
read-second_turned = Second axis, turned half round
read-middle_a = Peg A from the middle
read-middle_b = Peg B from the middle
read-near_a = Peg A from near A
read-far_b = Peg B from near A
read-to_a = Laser to peg A, feet
read-to_b = Laser to peg B, feet

more-where = Where does the rod stand?
more-places-station = STATION and offset
more-places-ties = TWO TAPES from marks
more-places-paced = PACED between marks
more-station = Station, such as 18.5 or 10+40
more-offset = Offset, feet
more-upStation = Looking up-station, the rod is
more-first = First mark
more-tape = Level tape from the first, feet
more-second = Second mark
more-tape2 = Level tape from the second, feet
more-toSecond = Standing at the first, looking to the second, the rod is
more-paces = Paces from the first
more-of = Paces for the whole way
more-left = LEFT
more-right = RIGHT
more-stands = The rod stands on (the ground to dig to when left out)

# $rod (text) the rod's name
# $setUp (text) the set-up's name as people read it, such as SETUP-1
more-rod = Rod { $rod }, by { $setUp }
more-rocked = Other readings of the rocked rod, parted by ; the smallest counts
more-blind = Read without seeing the last one?
more-no = NO
more-yes = YES, BLIND

paper-title = FROM PAPER
paper-note = For readings that were booked while the hub was away. They count as what was measured then, are labelled, and no machine is told.
paper-at = Read at
paper-by = Read by
paper-type = TYPE THEM IN
paper-end = DONE WITH THE PAPER

twoNeeded = Two lasers must stand.
compareNote = Leave the rod on one firm point and read it from both. Beyond 0.02 ft both are to be checked.

# $setUp (text) the set-up's name as people read it, such as SETUP-1
rodFrom = Rod, read from { $setUp }
rodFromUnpicked = Rod, read from it
takeBenchmark = TAKE A LEVELLED POINT AS A BENCHMARK

# $by (text) by how many feet
# $allowed (text) the allowed misclosure, feet
misses = misses by { $by } ft of { $allowed } allowed.
newName = Name of the new benchmark
looks = What it looks like and where it is
