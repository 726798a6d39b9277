### t()
### English, the reference: what every page has: STOP, links, roles, good-byes.

title = Rodcall
stop = STOP
stopAll = STOP: every machine
back = BACK
cancel = CANCEL
close = CLOSE
none = none
hold = hold
heldShort = LET GO TOO SOON: HOLD UNTIL IT IS FULL
loading = Asking the hub…
noHub = No answer from the hub. Stay on the crew's Wi-Fi and try again.
linkLost = NO LINK
linkLostDo = No link to the hub. Use hands. This page tries again by itself.
linkUp = Link alive
haltedTitle = NO NUMBERS – USE HANDS
notInTheLog = This STOP is not in the log: the hub can't write. Write down who and when.
offSiteDo = The site file has this machine no more. Ask the supervisor. STOP still stops everybody.
halted = The hub can't keep the log and takes no calls. Use hands, see to the laptop.
photo = PHOTO
nobodyInIt = nobody need be in it

# $n (number) how many
photosWait =
    { $n ->
        [one] 1 photo waits on this phone.
       *[other] { $n } photos wait on this phone.
    }

# $n (number) how many
notSentCount = { $n } NOT SENT – USE HANDS
caution = A reminder, not a guard: it senses nobody. Eye contact rules.
lookAlways = Nobody on the list is not nobody there: LOOK.
struck-title = LINE STRUCK:
struck-notDrawn = not drawn
struck-asks-get_away = GAS. EVERYBODY AWAY NOW, UPWIND. Get out of the machine and away from it; no flame, no switch, no phone near it. From far off call 911, then its owner. Nobody goes back before the fire department says so.
struck-asks-live = POWER. TOUCH NOTHING, STAY AWAY: machine and ground can be live. In the cab stay in, unless it burns. Call 911, then its owner.
struck-asks-touch_nothing = TOUCH NOTHING, EVERYBODY OUT OF THE HOLE. Call its owner; if anybody is hurt, 911.
struck-asks-not_known = PIPE OR CABLE, NOT KNOWN WHAT. TOUCH NOTHING. Hit, hissing or a smell: everybody away upwind, 911, then its owner.

cautionShort = A reminder, not a guard: it senses nobody.

roles-ground = GROUND
roles-operator = OPERATOR
roles-supervisor = SUPERVISOR
roles-visitor = VISITOR
roles-hub = HUB

bye-removed = This phone was removed. Scan a code to come in again.
bye-retired = Another phone is this machine's screen now. This one shows no calls.
bye-ask_who = A new day has begun.
bye-day_over = The day is over. Scan a new code tomorrow.
bye-closing = The hub is closing.

## later()
## Comes with the scripts of what is seldom shown: a page that is fetched first can't name it.

skip = SKIP

# $n (number) how many
dropped = { $n } not sent under the name before. { $n ->
        [one] Take it again.
       *[other] Take them again.
    }

# $time (text) how long ago, such as 4 min
ago = { $time } ago

struck-key = STRUCK
