### What the aim is refused for.

which_marks_or_targets_aim = which marks or targets the aim is for
why_the_aim_is_set = why the aim is set
new_day_has_begun_since = A new day has begun since: the aims of the day before are off.
# $id (text) its name
# $revision (text) the number of the revision
was_changed_since = { $id } was changed since: r{ $revision } stands now.
# $on (text) on what, or of what
# $aim (text) the aim
somebody_has_set_aim_since = Somebody has set the aim on { $on } to { $aim } since.
