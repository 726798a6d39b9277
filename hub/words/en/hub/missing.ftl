### What is missing before a day can be closed; each goes on a list.

# $people (text) their names, with commas between
# $machine (text) the machine's name
people_in = { $people } may be in at { $machine }: everybody comes out first
# $set_up (text) the laser set-up as people read it: SETUP-1
closing_check = a closing shot on a benchmark with { $set_up }
# $mark (text) the mark's name
shoot_again = { $mark } was to be shot again
# $person (text) the person's name or initials
visitor_on_site = { $person } has not said OFF SITE
