### Figures that no site has.

name-swell = swell factor
name-compacted = compacted factor
name-truck_yards = truck's cubic yards
name-truck_tons = truck's tons
name-unit_weight = weight in pounds per cubic foot
name-moisture = water in percent of dry weight
name-percent = percentage
name-bearing = bearing in pounds per square foot
name-area = area in square feet
name-thickness = thickness in feet
name-yards = volume in cubic yards
name-tons = weight in tons
name-hours = time in hours
name-minutes = time in minutes
name-money = price
name-scatter = scatter in feet
name-tolerance = tolerance in feet
name-count = number
name-kilovolts = voltage in kilovolts
name-reach = machine's measure in feet
name-deviation = standard deviation in feet
name-landing = mean landing in feet
name-distance = distance in feet
name-slope = slope, out for one up,
name-guard_factor = factor of the guard band
name-pounds = weight in pounds
# $figure (text) which figure it is, in this language
# $value (text) as it was given
# $low (text) the lower limit
# $high (text) how high, or the upper limit
not_within = The { $figure } { $value } is not within { $low } to { $high }. Check it and put in the site's own.
