### t().wayIn
### English, the reference: the way into a keep-out: what to do, then why.

# $machine (text) the machine's name
ask = ASK { $machine } TO COME IN
outside = NOT ENTERING – SHOOTING FROM OUTSIDE

# $mark (text) the mark's name
# $machine (text) the machine's name
within = { $mark } lies within the keep-out of { $machine }.

# $machine (text) the machine's name
placeOld = Nobody has said lately where { $machine } stands: count yourself within.
tail = Behind the house and beside the tracks stay out, also with the bucket down. The blind side turns with the house.

# $machine (text) the machine's name
# $time (text) how long ago, such as 4 min
asked = { $machine } ASKED · { $time }
stayOut = STAY OUT
notAnswered = NOT ANSWERED – STAY OUT – GET EYE CONTACT

# $machine (text) the machine's name
noScreen = NOTHING SHOWS IN { $machine } – STAY OUT – GET EYE CONTACT
waitSaid = THE CAB SAYS WAIT – STAY OUT
noSaid = THE CAB SAYS NO – STAY OUT
comeIn = BUCKET IS DOWN. GET EYE CONTACT. PRESS IN AS YOU GO IN.
inKey = I GO IN
notGoing = I AM NOT GOING IN
askAgain = ASK AGAIN
seenNo = I STAY OUT

# $machine (text) the machine's name
# $time (text) how long already, such as 4 min
youAreIn = YOU ARE IN AT { $machine } · { $time }
outKey = I AM OUT

# $others (number) how many come along
withMe =
    { $others ->
        [0] I GO ALONE
       *[other] WITH ME: { $others }
    }
oneMore = one more comes along
oneLess = one less comes along

# $all (number) how many are in, the one who says it among them
allOut = ALL { $all } ARE OUT

# $who (text) the person's name
# $machine (text) the machine's name
toldOut = { $who } SAYS THAT YOU ARE OUT AT { $machine }. ARE YOU?

# $machine (text) the machine's name
toldOutInYourName = ANOTHER PHONE IN YOUR NAME SAYS THAT YOU ARE OUT AT { $machine }. ARE YOU?
stillIn = I AM STILL IN

# $mark (text) the mark's name
edgeFirst = { $mark } lies within a keep-out: ask before you tape there.
unconfirmed = THE CAB HAS NOT AGREED – GET OUT – GET EYE CONTACT

# $machine (text) the machine's name
screenLost = { $machine } SCREEN LOST – GET EYE CONTACT OR GET OUT
askNotSent = NOT SENT – STAY OUT – USE HANDS
inNotSent = IN NOT SENT – THE CAB DOES NOT KNOW – GET OUT OR GET EYE CONTACT
outNotSent = OUT NOT SENT – ON THE CAB'S SCREEN YOU ARE STILL IN
sending = SENDING – STAY OUT

# $who (text) the person's name
asks = { $who } ASKS TO COME IN

# $who (text) the person's name
# $mark (text) the mark's name
asksAt = { $who } ASKS TO COME IN AT { $mark }

# $who (text) the person's name
told = { $who } WAS TOLD TO COME IN

# $who (text) the person's name
isIn = { $who } IS IN

# $who (text) the person's name
isInUnasked = { $who } IS IN – YOU DID NOT AGREE
lostLink = NO LINK
bucketDown = BUCKET DOWN · LEVER LOCKED
holdsDown = BUCKET DOWN
wait = WAIT
no = NO
release = RELEASE

# $who (text) the person's name
notReleased = NOT RELEASED: { $who } IN. Look, and wait for OUT.
empty = NOBODY SAYS THEY ARE IN – LOOK BEFORE YOU HOLD RELEASE
nobody = NOBODY HAS ASKED TO COME IN – LOOK ANYWAY

# $who (text) the person's name
wasIn = { $who } IN. STAND STILL.
shownAfter = SHOWN IN THE CAB AFTER RELEASE

stages-asked = asks
stages-waiting = told to wait
stages-refused = told no
stages-answered = told to come in
stages-in = IN
stages-unconfirmed = IN, NOT AGREED

## later()
## Comes with the scripts of what is seldom shown: a page that is fetched first can't name it.

# $all (number) how many are in, the one who says it among them
allSeen = They are { $all }. Press it only when you have seen all { $all } out.
