### t()
### English, the reference: what ground and supervisor share.

# $n (number) the revision's number
revision = r{ $n }

## later()
## Comes with the scripts of what is seldom shown: a page that is fetched first can't name it.

now = NOW
change = CHANGE
no = NO
benchmarks = BENCHMARKS
machines = Machines
lasers = Lasers
people = Phones joined
why = Why? It goes into the log.
rule = RULE

# $who (text) the person's name
screenShows = { $who }, screen showing
screenNone = no phone in the cab

# $who (text) the person's name
screenHiddenBy = { $who }, screen hidden

# $who (text) the person's name
screenLostBy = { $who }, link lost
aim = Aim
layers = Layers
mark = Mark
visitor = You look on. STOP works for you too.
