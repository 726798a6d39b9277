### Why a levelling does not hold.

# $changed (text) by how much it changed
height_not_changed = The laser's height changed by only { $changed }. Raise or lower it by at least 0.10 ft, then shoot the benchmark and the point again.
# $disagreement (text) how far it came out
# $allowed (text) how much is allowed
disagrees = The point came out { $disagreement } from its first elevation; { $allowed } is allowed. Shoot the benchmark and the point again, with the rod plumb.
