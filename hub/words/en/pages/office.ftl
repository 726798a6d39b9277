### office()
### English, the reference: the supervisor's pages.

yes = YES

shapes-fold = planes folded
shapes-along = profile along a line
shapes-trench = trench
shapes-face = cut face
shapes-surface = surface
shapes-strip = below the ground as it lies
shapes-contour = contour

pocketSheet = POCKET SHEET
cabPapers = For each cab and for the tailgate, for when hands are all there is:

sheetBooked-1 = Rod
sheetBooked-2 = Time
sheetBooked-3 = By

sheetAfterwards = Book what was read here; afterwards MORE · FROM PAPER on READ takes it in.
noSheets = No laser stands: set one up first.
entry = entry
allowed = Allowed, ft
sheetUnproven = NOT PROVEN: shoot a second benchmark before you use it.
sheetVoid = Void when this laser is taken down or moved, or when a target gets a new revision.

# $list (text) pairs such as 0.1 = 1, parted by dots
sheetTenths = A rod that reads less stands on high ground: { $list } tenths down. One that reads more stands low, as many tenths too deep.
unprovenRuns = Not proven

# $name (text) the run's name
# $feet (text) feet
# $of (text) the run's whole length, feet
# $gaps (text) the stretches without proof, from station to station
unprovenRun = { $name }: { $feet } of { $of } ft ({ $gaps })

# $asked (number) how many readings were asked about
# $slips (number) how many were slips
# $hits (number) how many of them were what was suggested
questionsCame = { $asked } readings asked about: { $slips } slips, { $hits } of them as suggested
logTab = LOG
codesTab = CODES
targetsTab = TARGETS
siteTab = SITE
add = ADD
retire = RETIRE
newThing = new
mayBeLeftOut = optional
east = East
north = North
moreOfIt = ONE MORE
lessOfIt = TAKE OUT
lookAtIt = LOOK AT IT FIRST

# $n (number) how many
showAll = SHOW ALL { $n }
retireNote = What was said about it stays in the log.

# $n (number) how many
withItsMarks = LOOK: WITH { $n ->
        [one] ITS ONE MARK
       *[other] ITS { $n } MARKS
    }
nothingDiffers = Nothing differs from what is in force.

# $ft (text) feet
touchesMost = A dig-to changes by up to { $ft } ft.
importKey = IMPORT
importFile = Import points
chooseFile = A table of points (CSV) or LandXML 1.2
countsIn = It counts in, when it does not say

planUnits-foot = FEET
planUnits-survey_foot = SURVEY FEET
planUnits-metre = METRES

coordinatesOf = Its coordinates are
ofSite = THE SITE'S
ofPlan = THE PLAN'S
understood = Understood
notUnderstood = Not understood, or left aside

# $n (number) the line's number in the file
lineNo = Line { $n }:
becomes = The points become
targetOfMarks = Target of these marks

# $n (number) how many can be taken at once
# $all (number) how many points the file has
onlyFirst = The file has { $all } points; the first { $n } can be taken at once. Divide the file for the rest, or name it in the site file.

# $n (number) how many
leftOut = { $n } { $n ->
        [one] point is left out
       *[other] points are left out
    }: no name, or no elevation.
exportSite = Export: three files that belong in one folder. Where the site has excavation rules of its own, put that file beside them as excavation-rules.toml.
siteChanged = The change is in force and in the log.
exceptions = Needs somebody
noExceptions = Nothing waits for anybody.
remove = REMOVE

# $who (text) the person's name
removeAsk = Remove the phone of { $who }? It must scan a code again.
lift = LIFT STOP
liftWhy = What did you see before lifting it?

# $machine (text) the machine's name
liftOne = { $machine } ALONE

# $machines (text) the machines' names, parted by commas
liftAll = ALL: { $machines }

slew-act = AGREE SLEW

# $one (text) the one machine
# $other (text) the other machine
slew-title = { $one } and { $other }
slew-why = Their booms can meet. Both operators press AGREED; it is void as soon as one moves.

# $machine (text) the machine's name
slew-keepsOut = { $machine } keeps out of the
slew-note = A word about it
slew-propose = SHOW IT TO BOTH CABS

# $one (text) the one machine
# $other (text) the other machine
# $apart (text) feet between the two
# $needs (text) feet that are needed
slew-canMeet = { $one } and { $other } can meet: { $apart } ft apart, { $needs } needed

# $machine (text) the machine's name
# $line (text) the line's name
slew-spotterNeeded = { $machine } can come too near to { $line } overhead: it needs a spotter

# $machine (text) the machine's name
# $zone (text) the name of the face or trench
# $inside (text) feet inside
slew-onSlope = { $machine }: tracks { $inside } ft inside the slope of { $zone }, the competent person rules

startDay-ready = DAY IS READY
startDay-whyWithout = These have no value. Why does the day begin without them?

# $said (number) how many start checks are said
# $of (number) of how many
startDay-needs = Day not ready: { $said } of { $of } start checks

nearMiss-title = Near misses

# $n (number) the near miss's number
nearMiss-name = NM-{ $n }
nearMiss-act = NEAR MISS
nearMiss-ask = What happened, and what was done about it?
nearMiss-add = ADD WORDS
nearMiss-close = CLOSE IT
nearMiss-knew = What the hub knew then: as last said, nothing senses it
nearMiss-said = Said

# $east (text) the coordinate to the east, feet
# $north (text) the coordinate to the north, feet
# $by (text) who said where it stands
# $at (text) the time of day, such as 10:05
nearMiss-stood = at E { $east } N { $north } ({ $by }, { $at })
nearMiss-noPlace = nobody had said where

# $zone (text) the name of the face or trench
# $feet (text) feet
nearMiss-face = { $zone } { $feet } ft away

# $zones (text) the names of the faces
nearMiss-facesLeft = Faces that people had to get away from by then: { $zones }

# $n (number) the near miss's number
# $by (text) who pressed
nearMiss-needsWords = NM-{ $n }: { $by } pressed ALL STOP. Say what happened.

# $n (number) the near miss's number
# $by (text) who pressed
# $why (text) why, in words
nearMiss-needsWordsWhy = NM-{ $n }: { $by } pressed ALL STOP: { $why }. Say what happened.

rulings-leave = LEAVE IT
rulings-patch = PATCH
rulings-trim = TRIM

# $machine (text) the machine's name
# $by (text) who pressed STOP
exception-stopped = { $machine } stopped by { $by }

# $machine (text) the machine's name
# $by (text) who pressed STOP
# $why (text) why, in words
exception-stopped_why = { $machine } stopped by { $by }: { $why }

# $setUp (text) the set-up's name as people read it, such as SETUP-1
exception-laser_in_doubt = { $setUp } in doubt: shoot two benchmarks

# $mark (text) the mark's name
# $dev (text) the signed difference to the target
exception-needs_ruling = { $mark } is { $dev }: two shots too close to call

# $machine (text) the machine's name
# $why (text) what cant says, such as WATER
exception-cant = { $machine } can't: { $why }

# $machine (text) the machine's name
# $why (text) what cant says, such as WATER
# $mark (text) the mark's name
exception-cant_at = { $machine } can't at { $mark }: { $why }

# $machine (text) the machine's name
exception-screen_not_showing = { $machine }: nothing shows in the cab. Hands.
exception-site_changed = The site file has changed

# $machine (text) the machine's name
# $target (text) the target's name
exception-target_not_seen = { $machine } has not seen the new { $target }

# $machine (text) the machine's name
# $marks (text) the marks' names, parted by commas
exception-ties_first = { $machine } is about to take { $marks }, laid from another mark and without ties: tie first

# $machine (text) the machine's name
exception-look_asked = { $machine } asks for a look

# $target (text) the target's name
# $apart (text) what differs, both values
exception-target_typed_apart = { $target } was typed twice and differs: { $apart }

showDifference = SHOW
siteChange = The site file has changed. Nothing of it is in force yet.
confirmChange = PUT IN FORCE
oddInPlan = Odd in the new plan

# $marks (text) the marks' names, parted by commas
touches = Touches { $marks }.

# $marks (text) the marks' names, parted by commas
# $out (text) marks that are out of tolerance now
touchesOut = Touches { $marks }. Accepted before, out now: { $out }.

wasNow-what = What
wasNow-was = Was
wasNow-now = Is
wasNow-digTo = Dig-to, ft

# $what (text) what was changed then
# $who (text) the person's name
# $at (text) date and time of the change that is undone
# $why (text) why, in words
undoes = UNDOES WHAT { $who } CHANGED HERE, { $at } (“{ $why }”): { $what }.

# $were (text) feet that layers took off before
# $are (text) feet that layers take off now
layersTake = layers took { $were } ft off, take { $are } ft off
moreChanges = its surface, edge, undercuts or tolerance change too
lastMarks = Last readings
aimSet = SET AIM
aimOn = On

# $on (text) what it is on: a mark, a patch or a target
# $aim (text) the aim in feet, signed
# $revision (number) the revision's number
aimNow = { $on } now: aim { $aim } ft, target r{ $revision }
aimHint = Feet; negative is deeper
noAims = Aim is the target everywhere.
revise = REVISE
badNumber = Type a number of feet, such as 302.00.
newCodes = NEW CODES
codesLast = How long codes last

lasts-today = TODAY
lasts-this_week = THIS WEEK
lasts-until_renewed = UNTIL NEW ONES

lastsNote = Whoever has a code comes in as long as it lasts. Make new ones when one is lost or a crew leaves.

phones-open = PHONE

# $who (text) the person's name
phones-of = { $who }'s phone
phones-asksWho = has not said who holds it

# $by (text) the supervisor who confirmed it
phones-confirmed = confirmed by { $by }
phones-notConfirmed = NOT CONFIRMED: does not count as the competent person
phones-stays = stays joined overnight

# $who (text) the person's name
phones-confirmAsk = Look whose hands it is in. Then the phone counts today as { $who }'s: as a witness, and as the competent person when the site file names { $who }.

# $who (text) the person's name
phones-confirm = THIS IS { $who }
phones-letStay = LET IT STAY JOINED OVERNIGHT
phones-noStay = NOT OVERNIGHT ANY MORE

# $machine (text) the machine's name
phones-giveAsk = Another phone may take the cab of { $machine } within 10 minutes.

# $machine (text) the machine's name
phones-give = GIVE THE CAB OF { $machine }

newCodesAsk = Void every code and print new ones? Phones that have joined stay joined.
print = PRINT
codesAddress = Phones reach the hub at
addressChanged = The address differs from yesterday's. Print the codes again.
wifi = Wi-Fi
choose = USE THIS

exportDay = Day file
exportTable = Table

restore-key = TRY A RESTORE
restore-tries = Exporting, taking it in again, comparing…

# $entries (number) how many entries the log has
# $photos (number) how many photos
# $days (number) how many days
# $sheets (number) how many sheets
restore-back = Everything came back, every sheet the same. Entries { $entries }, photos { $photos }, days { $days }, sheets { $sheets }.

verdicts-high = HIGH
verdicts-on = ON
verdicts-low = LOW
verdicts-too_close_high = too close to call, HIGH side
verdicts-too_close_low = too close to call, LOW side

cuts-tab = FACES
cuts-noFaces = The site file names no face and no trench.

# $name (text) the name of the set of rules
cuts-rulesBy = Rules: { $name }
cuts-engineerTitle = Textbook heights and forecasts are for the engineer alone: no permission.

# $c (text) the soil's cohesion, pounds a square foot
# $weight (text) pounds a cubic foot
cuts-critical = Textbooks' critical heights of a vertical face: c { $c } psf (half the strength), { $weight } pcf, one soil, dry, no load. Water in a crack makes each less.
cuts-noTension = no tension is relied on, a dry crack may run its whole depth
cuts-halfCracked = cracked from the crest to half the height (Terzaghi)
cuts-uncracked = whole to the crest and holding in tension: the most hopeful
cuts-noCritical = No critical height: no strength was measured.

# $at (text) the time of day, such as 10:05
cuts-forecast = One over the crack's rate reaches nothing at { $at }: two rates, no promise
cuts-design = ENGINEER'S DESIGN

# $name (text) the name of the face, trench, structure or line
cuts-designTitle = Engineer's own design of { $name }
cuts-designBelow = Run to 1 from the toe
cuts-designTop = Up to elevation, ft; empty to the ground
cuts-designAbove = Run to 1 above that
cuts-designWhy = Whose design, where is it written?
cuts-allowAt = For which mark? The leave is for that place alone.

# $n (number) how many
cuts-notLocated = NO TICKET: { $n } { $n ->
        [one] mark
       *[other] marks
    }
cuts-allow = LET GO ON
cuts-allowAsk = Why does it go on, on whose word?
cuts-ticket = Locate ticket
cuts-checkTicket = CHECK TICKET
cuts-answers-marked = MARKED
cuts-answers-none_here = NONE HERE
cuts-answers-silent = NO ANSWER

# $zone (text) the name of the face or trench
# $why (text) why, in words
cuts-exception-face_left = Everybody had to get away from { $zone }: { $why }

# $zone (text) the name of the face or trench
# $why (text) why, in words
cuts-exception-inspection_due = { $zone }: inspection due, { $why }

# $zone (text) the name of the face or trench
# $why (text) why, in words
cuts-exception-inspection_overdue = { $zone }: worked under without inspection, { $why }

# $zone (text) the name of the face or trench
# $line (text) the line's name
# $feet (text) feet
cuts-exception-daylight_over = { $zone } would come to daylight { $feet } ft over { $line }

# $zone (text) the name of the face or trench
# $line (text) the line's name
cuts-exception-daylight_touch = { $zone } would come to daylight on { $line }

# $zone (text) the name of the face or trench
# $line (text) the line's name
# $clear (text) feet between the two
# $need (text) feet that are needed
cuts-exception-crossing = { $zone } crosses { $line } with { $clear } ft, needs { $need }

# $pile (text) the spoil pile's name
# $zone (text) the name of the face or trench
# $back (text) feet from the crest
# $need (text) feet that are needed
cuts-exception-pile_at_crest = { $pile } stands { $back } ft behind the crest of { $zone }: move it back to { $need } ft

# $line (text) the line's name
cuts-exception-paint_gone = Paint of { $line } is gone: ask for it again

wayIn-inside = In a keep-out
wayIn-nobodyIn = Nobody has said that they are in. Look anyway.
wayIn-sawOut = SAW OUT

# $who (text) the person's name
# $machine (text) the machine's name
wayIn-sawOutTitle = { $who } out at { $machine }
wayIn-sawOutAsk = What did you see? It goes into the log.

# $who (text) the person's name
wayIn-tellThem = Tell { $who }: out now, and ask again before going in.

# $who (text) the person's name
# $machine (text) the machine's name
wayIn-needsUnconfirmed = UNCONFIRMED ENTRY: { $who } at { $machine }. Get { $who } out.

# $who (text) the person's name
# $machine (text) the machine's name
wayIn-needsLink = { $who } is IN at { $machine }, no link. Look.

# $who (text) the person's name
# $machine (text) the machine's name
wayIn-needsAnswer = { $who } asks at { $machine }: no answer.
