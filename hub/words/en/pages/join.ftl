### t()
### English, the reference: coming in, and who holds a phone.

joinTitle = Come in
joinWho = Name or initials
joinRole = What you do here
joinIn = IN
joinNeedName = Type your name or initials first.
joinNeedRole = Press what you do here first.
joinNeedCode = Scan a code from the tailgate to come in, or type the address under it.
joinVoid = This code is void. Ask the supervisor for today's code.

# $machine (text) the machine's name
joinCab = This phone becomes the screen of { $machine }.

# $who (text) the person's name
# $time (text) the time of day, such as 10:05
sameName = { $who } is here already, on another phone since { $time }. Who are you?

# $who (text) the person's name
# $machine (text) the machine's name
sameNameIn = { $who } may be IN at { $machine }. Only { $who } says OUT for { $who }, or somebody who has looked.

# $who (text) the person's name
samePerson = I AM THAT { $who }, ON ANOTHER PHONE
otherPerson = I am somebody else. My name here:
otherIn = IN AS SOMEBODY ELSE
joinStay = If the phone says this Wi-Fi has no internet: stay connected. It needs none.

## later()
## Comes with the scripts of what is seldom shown: a page that is fetched first can't name it.

# $who (text) the person's name
stillYou = { $who }?
stillYouWhy = This phone stayed joined over the night. Say who holds it; STOP works at once.

# $who (text) the person's name
yesIAm = YES, { $who }
somebodyElse = SOMEBODY ELSE

# $machine (text) the machine's name
giveCab = GIVE THE CAB OF { $machine } TO ANOTHER PHONE
giveCabNote = Then scan the cab's code with the other phone within 10 minutes. Not while the bucket is held down or somebody asks or is in.
getOut = Before anyone gets out of the cab. Then another machine is asked from there.
