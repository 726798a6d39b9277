### What a sloped laser is refused for.

sloped_laser_height_depends_where = A sloped laser's height depends on where it stands. Say near which mark.
sloped_laser_proven_by_three = A sloped laser is proven by three benchmarks whose places are known. Add them, or set the laser level.
# $id (text) its name
nobody_has_said_where_is = Nobody has said where { $id } is: a sloped laser's height over it is not known. Shoot another benchmark.
# $set_up (text) the laser set-up as people read it: SETUP-1
is_sloped = { $set_up } is sloped: that is for a level laser. Prove it on benchmarks that do not lie in one line with it.
