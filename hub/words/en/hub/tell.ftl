### Entries of the log as sentences.

# $site (text) the site's name
site_taken_from_its_file = Site “{ $site }” taken from its file.
# $differences (text) how many
site_file_differs_places = The site file differs in { $differences } places; it waits for a supervisor.
# $differences (text) how many
changed_site_file_force_changes = The changed site file is in force ({ $differences } changes).
# $aim (text) the aim
# $on (text) on what, or of what
# $why (text) the reason, as it was said or found
aim_on = Aim { $aim } on { $on }: { $why }
# $revision (text) the number of the revision
# $target (text) the target's name
# $machine (text) the machine's name
revision_of_seen_in = Revision { $revision } of { $target } seen in { $machine }.
# $put (text) what was put and retired, in this language
# $touched (text) how many marks it touches
# $why (text) the reason, as it was said or found
the_site_is_changed = The site is changed. { $put }. { $touched } marks touched: { $why }
# $target (text) the target's name
# $revision (text) the number of the revision
# $marks (text) the marks: names, or how many
# $why (text) the reason, as it was said or found
target_now_revision_marks_touched = Target { $target } is now revision { $revision }, { $marks } marks touched: { $why }
# $target (text) the target's name
typed_a_second_time = { $target } typed a second time: it agrees.
# $target (text) the target's name
# $what (text) what is meant, in this language
typed_a_second_time_2 = { $target } typed a second time: it differs. { $what }.
# $names (text) their names, with commas between
put = Put: { $names }
# $names (text) their names, with commas between
retired = Retired: { $names }
