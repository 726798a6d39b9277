### What an undercut is refused for.

# $mark (text) the mark's name
belongs_to_no_target = { $mark } belongs to no target: there is nothing to undercut.
