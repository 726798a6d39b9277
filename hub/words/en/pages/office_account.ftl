### office().account
### English, the reference: the account, for the supervisor.

tab = ACCOUNT
noPrices = No price list: hours are shown without money. Put the site's own prices in.
prices = PRICES
pricesTitle = The site's own prices
pricesNote = Nothing is guessed: what is left empty is not counted.

# $machine (text) the machine's name
machineHour = { $machine }, an hour with operator
truckHour = A truck, an hour
groundHour = A ground hand, an hour
truckYards = A truck takes, cubic yards loose
truckTons = What a truck may carry by weight, tons

# $name (text) the name of the material
loosePcf = { $name } in the truck, pounds a cubic foot
gravelTon = Gravel, a ton delivered
gravelPlaced = Gravel, a cubic foot placed and rammed
bearing = Bearing asked, lb/ft²
shallow = A shallow spot costs
shallowRock = A shallow spot in rock costs
tooDeep = A too deep spot costs
save = PUT IN
badPrice = Write plain numbers, such as 195 or 2.60.
hours = Hours and waiting
noHours = No machine has been at work yet.
hoursNote = From the log, up to its last line: digging is whatever nobody called anything else.

doing-digging = digging
doing-look = waits for a look
doing-stopped = STOP
doing-laser_hold = laser in doubt
doing-target_hold = changed target unseen
doing-cant = can't go on
doing-truck = waits for trucks
doing-attachment = changes attachment
doing-broken = broken
doing-parked = parked
doing-other_wait = waits
doing-screen_lost = hand signals

cost = Cost of the day

# $what (text) the machine's name
costOf-machine = { $what } digging

# $what (text) what was waited for
costOf-waiting = Waiting: { $what }

# $what (text) the material
costOf-loads = Loads: { $what }

# $what (text) tons
costOf-gravel = Gravel, { $what } t

# $what (text) cubic yards
costOf-patches = Patches, { $what } cy at the placed price

dayCost = The day
jobCost = The job so far

# $machines (text) the machines' names, parted by commas
withoutRate = No rate for { $machines }: not in the sum.
noLoads = No load has been counted.

# $n (number) how many
trucksOf =
    { $n ->
        [one] 1 truck
       *[other] { $n } trucks
    }

# $yards (text) cubic yards
looseYards = { $yards } cy loose

# $tons (text) tons
tonsOf = { $tons } t

# $n (number) how many
ticketsMissing = { $n } without ticket

# $percent (text) per cent
agrees = tickets { $percent } % of counted

limit-brim = full to the brim
limit-weight = as heavy as the truck may be, not full
limit-not_weighed = by the brim: what it may weigh is not counted

# $bank (text) cubic yards in the ground
# $loose (text) cubic yards loose
# $loads (text) the loads that it would be, rounded
measuredIs = measured { $bank } cy in the ground, { $loose } loose, { $loads } loads

# $percent (text) per cent
countedBy = counted { $percent } % of measured
differs = MORE THAN 10 % APART: ask
measure = MEASURED
measureTitle = Soil measured in the ground
bankYards = Cubic yards in the ground, dug so far
ticket = TICKET

# $material (text) the name of the material
ticketOf = Ticket for { $material }
ticketNumber = Ticket number
ticketYards = Cubic yards on it (may stay empty)
ticketTons = Tons on it (may stay empty)
takenBack = taken back
amountOwed = amount not said: its ticket says it
soilLeft = Soil still to remove

# $target (text) the target's name
# $cut (text) cubic yards still in the ground
# $loose (text) what looseOf says, or nothing
soilLeftOf = { $target }: { $cut } cy in the ground{ $loose }

# $loose (text) cubic yards loose
looseOf = , { $loose } loose

# $read (number) how many marks are read
# $marks (number) how many marks the target has
soilRead = { $read } of { $marks } marks read; the others are not counted
gravel = Gravel
noGravel = No gravel in the price list.

# $nominal (text) cubic yards as drawn
# $low (text) cubic yards for low spots
# $patches (text) cubic yards for patches
gravelParts = drawn { $nominal } + low spots { $low } + patches { $patches } cy
mean = Expected
enough = Enough 9 times in 10

# $tons (text) tons
# $loads (number) how many loads
# $cost (text) a sum of money with its sign
gravelLine = { $tons } t · { $loads } { $loads ->
        [one] load
       *[other] loads
    } · { $cost }

# $ordered (text) tons ordered
# $came (text) tons that came
ordered = Ordered { $ordered } t, came { $came } t

# $tons (text) tons
short = SHORT by { $tons } t: order more before the pit closes
orderTitle = Order gravel
orderTons = Tons
orderNote = From where, agreed with whom
landings = Where finish passes land
noLandings = No finish pass yet: it is the first reading after a call of 3½ tenths or less.

# $mean (text) feet, signed
# $sd (text) the standard deviation, feet
# $n (number) how many
landsAt = { $mean } ft on average, ± { $sd } ft, { $n } { $n ->
        [one] pass
       *[other] passes
    }

# $aim (text) the aim in feet, signed
aimAt = Aim { $aim } ft

# $aim (text) the aim in feet, signed
aimRock = in rock { $aim } ft

# $from (text) the lower end, feet
# $to (text) the upper end, feet
aimSure = so few passes put it between { $from } and { $to } ft

# $cost (text) a sum of money with its sign
# $onTarget (text) the part of spots that land on the target, per cent
aimSaves = a spot then costs { $cost }, { $onTarget } on the target
aimNoPrices = Where to aim needs the prices of gravel, of a shallow and of a too deep spot.
curve = What a spot costs by where the mean lands, feet from the target

surfaces-trimmed = on trimmed ground
surfaces-tooth_marked = on tooth-marked ground
surfaces-hard_or_rock = on hard ground or rock

noTests = No soil test yet.
replaced = tested again since
voidTest = VOID IT
voidWhy = Why does it not count any more?

# $by (text) by how many feet
voidMoved = the ground moved { $by } ft

# $target (text) the target's name
voidRevised = { $target } was revised
voidRain = it rained on it
voidWater = it stood in water

# $zone (text) the name of the face or trench
voidSlough = { $zone } came down beside it

# $setUp (text) the set-up's name as people read it, such as SETUP-1
voidLaser = { $setUp } had moved

# $mark (text) the mark's name
# $depth (text) feet deeper
# $cy (text) cubic yards
# $material (text) the name of the material
undercutOf = { $mark }: dig { $depth } ft deeper, { $cy } cy of { $material }
confirmUndercut = PUT IN FORCE
undercutWhy = On whose word?
noPatches = No patch is needed.

# $on (text) what it is on: a mark, a patch or a target
# $lift (number) the lift's number, 1 at the bottom
# $thick (text) feet thick
# $passes (number) how many passes
liftLine = { $on }, lift { $lift }: { $thick } ft, { $passes } { $passes ->
        [one] pass
       *[other] passes
    }
thick = THICKER THAN A LIFT MAY BE
rock = Rock above the dig
noRock = No rock point.

# $cy (text) cubic yards
# $doubt (text) cubic yards, the doubt either way
rockIs = { $cy } cy, ± { $doubt } for where it ends

# $top (text) the elevation of its top, feet
# $east (text) the coordinate to the east, feet
# $north (text) the coordinate to the north, feet
rockPoint = top { $top } ft at E { $east } N { $north }

# $tons (text) tons
exceptions-gravel_short = GRAVEL IS SHORT by { $tons } t: order before the pit closes

# $mark (text) the mark's name
exceptions-undercut_waits = Undercut at { $mark } waits for you

# $mark (text) the mark's name
exceptions-retest_owed = { $mark }: soil test FAILED, test again

# $mark (text) the mark's name
exceptions-retest_void = { $mark }: soil test VOID, test again
