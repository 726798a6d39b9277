### What is wrong with a target.

# $station (text) the station
# $by (text) by how much, or by whom
# $before (text) what comes before; `true` when it lies before the start
# $length (text) how long
past_end = Station { $station } is { $by } past its { $before ->
        [true] start
       *[false] end
    }: the run goes from 0 to { $length }. Pick a mark on the run, or have the run drawn longer.
# $by (text) by how much, or by whom
outside_boundary = The place is { $by } outside the target's boundary. Pick a mark inside it, or have the boundary revised.
no_surface = The target does not say what its elevation is. Name the surface, such as top of footing.
# $number (text) its number
layer_unnamed = Layer { $number } from the top has no name. Name it, such as gravel.
# $name (text) its name
# $thickness (text) how thick
layer_thickness = Layer “{ $name }” is { $thickness } thick: a layer is more than 0 and at most 5 ft. Check the unit and the point.
no_direction = The run's start and the point it goes toward are the same. Give another point up-station.
# $length (text) how long
no_length = The run is { $length } long. Give its length from station 0 to the end, above zero.
# $left (text) how wide to the left
# $right (text) how wide to the right
no_width = The run's widths are { $left } to the left and { $right } to the right. Give both at or above zero, one of them above.
no_steps = The run has no elevation. Give at least the one from station 0 on.
# $from (text) from where
first_step = The first elevation is given from station { $from } on. Give the one from station 0.
# $station (text) the station
step_order = The step at station { $station } does not lie beyond the one before it. Give the steps up-station, each once.
# $station (text) the station
# $length (text) how long
step_past_end = The step at station { $station } lies past the run's end at { $length }. Check the station and the length.
# $station (text) the station
step_window = The step at station { $station } has a window below zero. Give how far, either way, its face may fall.
# $corners (text) how many corners
too_few_corners = The boundary has { $corners } corners. Give at least three, in order, or none at all.
boundary_crosses = The boundary crosses itself. Give its corners in order, walking around it.
# $name (text) its name
# $known (text) the surfaces that it has
no_such_surface = There is no “{ $name }” in this target. It has: { $known }.
# $band (text) the band
contour_band = The contour's band is { $band }. Give how far off level the walk may be, above zero and at most 0.5 ft.
no_stations = This target has no stations. Give the place by a mark, by two ties or by pacing instead.
# $by (text) by how much, or by whom
# $side (text) which side
beside_run = The place is { $by } past the { $side ->
        [left] left
       *[right] right
    } edge of the run. Pick a mark on the run, or have its width revised.
# $rise (text) the rise
# $side (text) which side
too_steep = The plane rises { $rise } ft per foot to the { $side ->
        [east] east
        [north] north
       *[outlet] outlet
    }. Write 2 % as 0.02; steeper than 1 is a face, not a grade.
# $name (text) its name
undercut-no_name = Undercut “{ $name }” has no name. Name it.
# $name (text) its name
undercut-no_material = Undercut “{ $name }” does not say what fills it again. Name the material.
# $name (text) its name
undercut-depth = Undercut “{ $name }” must be more than 0 and at most 10 ft deep. Check the unit and the point.
