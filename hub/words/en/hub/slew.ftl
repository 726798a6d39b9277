### The sides on which machines keep out, and what is refused of them.

north = north
north_east = north-east
east = east
south_east = south-east
south = south
south_west = south-west
west = west
north_west = north-west
takes_two_machines_somebody_has = It takes two machines, and somebody has to say where each stands.
not_proposed_any_more = That is not proposed any more. Look at the screen.
