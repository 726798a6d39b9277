### visit()
### English, the reference: the visitors' page.

# $since (text) since which time of day
here = You are ON SITE since { $since }.
notHere = You have not said that you are on site.
onSite = I AM ON SITE
offSite = I AM OFF SITE
nothingShown = The supervisor chooses what you see here. Tell them what you came for.
readOnly = Nothing here can be changed from this phone.

# $high (text) feet that are allowed high
# $low (text) feet that are allowed low
allowed = Allowed: { $high } ft high, { $low } ft low

# $at (text) the station, such as 10+40
station = sta { $at }

# $revision (number) the revision's number
revision = Revision { $revision }
proven = PROVEN
notProven = NOT PROVEN

# $feet (text) feet
# $of (text) the run's whole length, feet
# $gaps (text) the stretches without proof, from station to station
unproven = Not proven: { $feet } of { $of } ft ({ $gaps })
allProven = A proven reading lies within reach of every station.
lasers = Laser proof
noReading = No reading yet.
doubt = IN DOUBT

# $at (text) the time of day, such as 10:05
goodAt = found good at { $at }
neverGood = never found good

# $benchmark (text) the benchmark's name
# $off (text) feet off, signed
# $at (text) the time of day, such as 10:05
lastCheck = last check on { $benchmark }: { $off } ft at { $at }
down = taken down
tests = Soil tests
noTests = No test at its marks.

standing-passes = PASS
standing-fails = FAIL
standing-void = VOID

# $mark (text) the mark's name
# $tester (text) who tested
# $at (text) the time of day, such as 10:05
byTester = { $mark } by { $tester } { $at }
photos = Photos
inspections = Your inspections

results-passed = PASSED
results-in_part = IN PART
results-failed = NOT PASSED

sign = SIGN THE RESULT
signed = Signed.

signature-signer = Name of whoever signs
signature-draw = Sign here with a finger
signature-wipe = WIPE
