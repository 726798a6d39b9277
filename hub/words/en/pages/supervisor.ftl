### t()
### English, the reference: what ground and supervisor share.

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

# $n (number) the revision's number
revision = r{ $n }
layers = Layers
mark = Mark
visitor = You look on. STOP works for you too.
