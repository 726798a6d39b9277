### What coming in is refused for.

# $led_at_most (text) the most that come along
say_how_many_come_along = Say how many come along: { $led_at_most } at most.
what_you_have_seen = what you have seen
# $own (text) what the page says of itself, with a comma before it
is_your_own_machine = { $own } is your own machine. Hold BUCKET DOWN before you get out of the cab.
# $own (text) what the page says of itself, with a comma before it
# $machine (text) the machine's name
hold_bucket_down_before_you = Hold BUCKET DOWN in { $own } before you get out; then ask { $machine }.
