### Soil tests: what is stated, and what is refused.

who_tested = who tested
# $mark (text) the mark's name
test_belongs_elevation = A test belongs to an elevation: shoot { $mark } first, then enter the test.
say_what_bearing_drawing_asks = Say what bearing the drawing asks, in pounds per square foot.
say_laboratory_greatest_density_percentage = Say the laboratory's greatest density and the percentage that is asked.
why_test_does_not_count = why the test does not count any more
# $stated_psf (text) what was stated
# $asked (text) what or who was asked
lb_ft_stated_asked = { $stated_psf } lb/ft² stated, { $asked } asked
# $wet_pcf (text) the wet weight
# $dry (text) the dry weight
# $of_the_greatest (text) how much that is of the greatest density, in this language
# $water_percent (text) water in percent
# $in_its_window (text) where the water lies in its window, with a comma before it; empty when nobody asks
wet_lb_ft_dry = wet { $wet_pcf } lb/ft³, dry { $dry }: { $of_the_greatest }; water { $water_percent } %{ $in_its_window }
# $percent (text) in percent
# $maximum_pcf (text) the greatest density
# $least_percent (text) what is asked, in percent
of_asked = { $percent } % of { $maximum_pcf }, { $least_percent } % asked
# $percent (text) in percent
of_the_greatest_density = { $percent } % of the greatest density
# $window (text) from how much to how much
too_dry_for = { ", " }TOO DRY for { $window }
# $window (text) from how much to how much
too_wet_for = { ", " }TOO WET for { $window }
# $window (text) from how much to how much
within = { ", " }within { $window }
