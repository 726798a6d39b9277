### What a target's revision is refused for.

why_target_changes_whose_word = why the target changes, and on whose word
# $id (text) its name
# $revision (text) the number of the revision
was_changed_since = { $id } was changed since: r{ $revision } stands now.
# $target (text) the target's name
# $wrong (text) what is wrong, in this language
of = { $target }: { $wrong }
