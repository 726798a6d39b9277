### office().record
### English, the reference: the record: closing, signing, visitors, inspections, queries, photos.

tab = DAY

# $day (text) the day's date
today = Day { $day }
isOpen = This day is open.
close = CLOSE THE DAY
closeAsk = A word about the day (optional)
missing = Missing before it can be closed

# $who (text) the person's name
# $machine (text) the machine's name
missingKind-people_in = { $who } may be IN at { $machine }. Nobody closes over that: everybody comes out first.

# $setUp (text) the set-up's name as people read it, such as SETUP-1
missingKind-closing_check = { $setUp }: no good benchmark shot after its last reading

# $mark (text) the mark's name
missingKind-shoot_again = { $mark } was to be shot again

# $person (text) the person's name
missingKind-visitor_on_site = { $person } has not said OFF SITE

closeOver = Close all the same, because
unprovenThen = Then every reading since the last good check is said to be NOT PROVEN.

# $who (text) the person's name
# $at (text) the time of day, such as 10:05
closedBy = Closed by { $who } at { $at }.
emptyDay = THIS DAY IS EMPTY: nothing was read, nothing was called.

# $setUp (text) the set-up's name as people read it, such as SETUP-1
# $since (text) since which time of day
closedUnproven = CLOSED UNPROVEN: { $setUp } has no closing check. Readings since { $since } are not proven.

# $what (text) what was missing at the close
# $why (text) why, in words
closedOver = Closed over: { $what } ({ $why })
never = it was set up
open = Open
nothingOpen = Nothing is open.

signature-signer = Name of whoever signs
signature-draw = Sign here with a finger
signature-wipe = WIPE

sign = SIGN THE DAY
signNote = You sign the log up to its last entry. What is said later is an amendment.

# $who (text) the person's name
# $at (text) the time of day, such as 10:05
signedBy = Signed by { $who } at { $at }.

# $code (text) the short code of the log's head
# $seq (number) the entry's number in the log
headCode = Head code { $code }, entry { $seq }
amend = AMEND
amendEntry = Entry that is amended (its number in the log)
amendWords = What is to be read with it
amendments = Amendments

# $entry (number) the entry's number in the log
# $day (text) the day's date
# $words (text) what is to be read with it
# $name (text) who amended it
amended = Entry { $entry } of { $day }: { $words } ({ $name })
note = NOTE
noteWords = What is to be noted?
notes = Notes
nextDay = OPEN THE NEXT DAY
nextDayAsk = Lasers are set up and proven anew, aims are off, faces are inspected anew, codes of one day are void. Whoever is not let stay joined over the night scans again. What is open goes on.
daysBefore = Days before

# $day (text) the day's date
# $closed (text) whether the day was closed
dayLine = { $day }: { $closed ->
        [true] closed
       *[false] NOT CLOSED
    }, NOT SIGNED

# $day (text) the day's date
# $closed (text) whether the day was closed
# $name (text) who signed
dayLineSigned = { $day }: { $closed ->
        [true] closed
       *[false] NOT CLOSED
    }, signed by { $name }
visitors = Visitors
noVisitors = No visitor has joined. Their code is under CODES.

# $since (text) since which time of day
onSite = ON SITE since { $since }

# $at (text) the time of day, such as 10:05
offSite = off site since { $at }
neverOnSite = has not said ON SITE
noPhone = phone not in today
showRuns = SHOW

# $who (text) the person's name
showRunsTo = What { $who } came for

# $list (text) names, parted by commas
shown = sees { $list }
shownNothing = sees nothing yet
sawOff = SAW OFF
inspections = Inspections
askInspection = ASK FOR ONE
inspectWhat = What is inspected?
inspectOf = Who is asked?
inspectOn = About (targets)
enterResult = ENTER RESULT
lookedAt = What was looked at? It is void when the ground there changes

# $at (text) the time of day, such as 10:05
# $mark (text) the mark's name
# $why (text) why, in words
voidSince = VOID since { $at }: at { $mark } { $why }
inspector = Inspector, as on their phone
shownItems = What was shown
itemWhat = What
itemFound = What was found
moreItems = ONE MORE
result = Result

results-passed = PASSED
results-in_part = IN PART
results-failed = NOT PASSED

inspectorWords = In the inspector's words
conditions = On which conditions?

# $what (text) what is inspected
# $of (text) who was asked
waitsFor = { $what }: asked of { $of }, not made yet
unsigned = not signed by the inspector yet
signHere = SIGN HERE
queries = Queries
askQuery = ASK THE ENGINEER
question = Question
queryOf = Who is asked?
queryOn = About these marks or targets
queryStops = Until it is answered
stop = STOP THERE
carryOn = CARRY ON
answer = ENTER ANSWER
answerWords = The answer
answerBy = Who answered, where is it written?
answerTarget = Target whose revision carries it out
noTarget = NONE
stopsWork = Work there is stopped until it is answered
carriesOn = Work carries on

# $who (text) the person's name
# $answer (text) the answer in the engineer's words
answeredBy = { $who }: { $answer }

# $target (text) the target's name
# $revision (number) the revision's number
byRevision = carried out by revision { $revision } of { $target }
photos = Photos

# $who (text) the person's name
# $why (text) why, in words
givenUp = promised by { $who }, not waited for any more: { $why }
giveUp = GIVE UP
giveUpWhy = Why will it not come?

# $who (text) the person's name
# $at (text) the time of day, such as 10:05
giveUpOf = { $who }'s photo of { $at }
withPhoto = A photo goes with it.

# $who (text) the person's name
promised = promised by { $who }, not here yet

# $mark (text) the mark's name
# $who (text) the person's name
# $at (text) the time of day, such as 10:05
photoOf = { $mark } { $who } { $at }

# $who (text) the person's name
# $entry (number) the entry's number in the log
logCut = THE LOG WAS CUT OR REWRITTEN: { $who }'s phone remembers entry { $entry }

# $query (text) the query's name
# $on (text) the marks or targets that it is about
queryWaits = { $query }: { $on } waits for the engineer's answer

# $entry (number) the entry's number in the log
logCutByIndex = THE LOG WAS CUT: its index remembers entry { $entry }
