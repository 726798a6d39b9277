### sums()
### English, the reference: the sums of layout.

whichSum = Which
workOut = WORK OUT

# $what (text) the target or mark that they are entered under
enterDiagonals = ENTER IN THE LOG, as { $what }
sumNote = Numbers without a unit are feet. A place is east; north. Nothing goes into the log unless you enter it.

sumNames-offset_hub = Letter an offset hub
sumNames-slope_tape = Tape on a slope
sumNames-diagonals = Two diagonals
sumNames-corner = Corner by three tapes
sumNames-swing_tie = Two tapes
sumNames-batter_string = String between batter boards
sumNames-width = Width, one edge strict

sumInputs-top = Top of the hub
sumInputs-dig_to = Dig to
sumInputs-offset = Offset, right of the line +, left −
sumInputs-slope = Tape along the slope
sumInputs-rise = Rise between its ends
sumInputs-base = Side A to B
sumInputs-across = Side B to C
sumInputs-a_to_c = Diagonal A to C
sumInputs-b_to_d = Diagonal B to D
sumInputs-one = One leg
sumInputs-other = The other leg
sumInputs-between = Between their ends
sumInputs-first = First point, east; north
sumInputs-first_tape = Tape from it
sumInputs-second = Second point, east; north
sumInputs-second_tape = Tape from it
sumInputs-first_board = First board's elevation
sumInputs-second_board = Second board's elevation
sumInputs-apart = Between the boards
sumInputs-along = From the first board to here
sumInputs-strict_edge = Line of the run to the strict edge
sumInputs-free_edge = Line of the run to the free edge
sumInputs-least_width = Least width
sumInputs-strict_drawn = Strict edge as drawn

sumOutputs-cut = Cut
sumOutputs-offset = Letter
sumOutputs-cut_or_fill = Letter
sumOutputs-station = Letter
sumOutputs-level = On the level
sumOutputs-wanted = Both should be
sumOutputs-skew_degrees = Out of square, degrees
sumOutputs-side_error = Sides off by
sumOutputs-toward = Move C and D toward
sumOutputs-move = By
sumOutputs-degrees = Corner, degrees
sumOutputs-left = Left of first to second
sumOutputs-right = Right of first to second
sumOutputs-angle_degrees = Tapes meet at, degrees
sumOutputs-weak = Weak: take another pair
sumOutputs-string_at = The string here
sumOutputs-down = Down from the string
sumOutputs-boards_level = Both boards at one height
sumOutputs-width = Width
sumOutputs-says = It is
sumOutputs-by = By

sumSays-yes = YES
sumSays-no = NO
sumSays-none = NOWHERE
sumSays-a = A
sumSays-b = B
sumSays-enough = WIDE ENOUGH, to spare
sumSays-too_narrow = TOO NARROW: dig the free edge
sumSays-strict_edge_out = STRICT EDGE TOO FAR OUT
sumSays-too_wide = TOO WIDE: more than a foot beyond
