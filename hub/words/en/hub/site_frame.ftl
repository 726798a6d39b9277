### What is wrong with the site's frame.

# $text (text) as it was typed
not_a_number = “{ $text }” is not a plan coordinate. Write a plain number with at most 7 decimals, such as 2000123.456.
too_far = A coordinate lies more than 100,000,000 ft from the origin. Check the origin, and whether east and north are swapped.
no_angle = The turn of the site's frame is no angle from -360 to 360. Give it in degrees, positive turning left; 0 when plan and site agree.
# $pins (text) the pins: their name, or how many
too_few_pins = { $pins } found pins do not fix the site's frame. Give at least two that stand apart, each with its plan and its measured place.
