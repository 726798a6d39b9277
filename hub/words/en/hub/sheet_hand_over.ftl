### The sheet for the hand-over.

no_run_has_marks_or = No run has marks or readings yet.
hand_over = Hand-over
under_it = , under it:{ " " }
width = . Width{ " " }
allowed_high = . Allowed high{ " " }
low = , low{ " " }
step_faces = Step faces
hubs_outside_of_the_dig = Hubs outside of the dig
nobody_said_from_which_hubs = Nobody said from which hubs its marks were laid.
station = #station
mark = mark
dig_to_ft = #dig to, ft
got_ft = #got, ft
difference = #difference
standing = *standing
trim_first = #trim first
paint = paint
not_read = not read
laid = laid
checked = checked
gone = GONE
station_of_the_face = #station of the face
may_be_off_ft = #may be off, ft
dig_to_before_ft = #dig to before, ft
dig_to_after_ft = #dig to after, ft
