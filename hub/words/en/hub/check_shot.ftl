### What a check shot is refused for.

shot_made_before_laser_put = That shot was made before the laser was put in doubt: it proves nothing about it now.
