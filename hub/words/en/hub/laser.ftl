### What is wrong with a laser's tests, checks and transfers.

drift-doubt = The doubt of a repeat must be a number of feet above 0, such as 0.023.
window-no_time = The failed check is not later than the good one. Check the two times and which check is which.
sloped-slope = The laser's slope must be a number between −0.25 and 0.25 feet per foot each way. Write 2 % as 0.02.
sloped-in_line = Both check shots lie in one line with the laser, where a turned axis does not show. Shoot one well off to the side.
# $apart (text) how far apart
# $allowed (text) how much is allowed
transfer-disagree = The turning point comes out { $apart } apart from the two set-ups; { $allowed } is allowed. Check both lasers on a benchmark.
# $apart (text) how far apart
# $least (text) the least that is allowed
transfer-planes_too_near = The two lasers stand { $apart } apart in height: a receiver can take one for the other. Move one by at least { $least }.
check_due-what-cost_of_a_check = cost of a check
check_due-what-cost_of_an_hour = cost of an undetected hour
check_due-what-rate = rate of disturbance
# $what (text) what is meant, in this language
check_due-not_above = The { $what } must be a number above 0. Put in the site's own figure.
