### t()
### English, the reference: the screen in the cab.

gotIt = GOT IT
gotPressed = YOU HAVE IT
checkMe = CHECK ME
checkAsked = ASKED
cantKey = CAN'T
old = OLD – ASK
noCall = NO CALL
noCallWhy = Nothing has been called.
noLink = NO LINK
noLinkDo = WATCH THE GROUND PERSON
bucketDown = Stand still, bucket down.
allMachines = EVERY MACHINE

# $who (text) the person's name
stopBy = { $who } pressed STOP
stopLift = A supervisor lifts it.
pause = PAUSE – LASER CHECK

# $setUp (text) the set-up's name as people read it, such as SETUP-1
pauseWhy = { $setUp } is in doubt. Wait for the next call.
newTarget = NEW TARGET
newTargetOld = Old numbers are dead.
seen = SEEN
shootAgain = Too close to call. Shooting again.
look = LOOK

# $who (text) the person's name
# $mark (text) the mark's name
inKeepOut = { $who } AT { $mark }
placeUnknown = Nobody has said where this machine stands.
placeOld = This machine's place was said too long ago.
seenIt = EYE CONTACT
tapOnce = NO SOUND YET: TAP ONCE
lockPhone = Switch the phone's own screen lock off for the shift.

## later()
## Comes with the scripts of what is seldom shown: a page that is fetched first can't name it.

cantWhy = What is in the way?
cantStops = FACE stops this machine, PIPE every machine on that main.
