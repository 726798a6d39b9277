### work()
### English, the reference: WORK: loads, patches, lifts, tests, rock.

loadKey = LOAD
loadTitle = Which load?
loadSent = One press is one truck.
otherLoad = OTHER
materialName = What is in it?
yards = Cubic yards loose (empty: the truck's own)
patchKey = PATCH

# $mark (text) the mark's name
patchTitle = Low at { $mark }: fill with gravel
patchNever = Never with dug soil.
long = Long, feet
wide = Wide, feet
deep = Deep, feet (empty: as the last reading has it)
filled = FILLED
done = DONE
ramKey = RAMMED
ramTitle = A lift is rammed
ramWhat = Where?
liftNumber = Which lift, from 1 at the bottom
liftThick = How thick, feet
passes = Passes
dampTitle = How damp?

damp-dry = DUSTS
damp-right = HOLDS
damp-wet = SQUEEZES OUT

testKey = SOIL TEST

# $mark (text) the mark's name
testTitle = Soil test at { $mark }
tester = Who tested?
statedPsf = Bearing as stated, lb/ft²
askedPsf = Asked by the drawing, lb/ft²
wetPcf = Wet density, lb/ft³
water = Water, % of dry weight
bearingKind = BEARING
densityKind = DENSITY
undercutDepth = FAIL: dig out how deep, feet (may stay empty)
undercutFrom = From station, feet
undercutTo = To station, feet
undercutWide = How wide, feet
rockKey = ROCK

# $mark (text) the mark's name
rockTitle = Rock at { $mark }
rockWhat = What is it? (rock, old concrete)
rockTop = Elevation of its top, feet (empty: the last reading)
waitKey = WAITING
lastLoads = Last loads
