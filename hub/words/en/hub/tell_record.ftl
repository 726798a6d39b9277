### The close and signature of a day, visitors, inspections, queries, notes and photos as sentences.

# $entry (text) the number of the entry
# $day (text) the day's name
# $signature (text) who signed
# $words (text) what somebody wrote
amendment_entry_day_signed_by = AMENDMENT to entry { $entry } of day { $day }, signed by { $signature }: { $words }
# $words (text) what somebody wrote
note = Note: { $words }
# $reading (text) the reading
# $why (text) the reason, as it was said or found
accepted_by_entry = Accepted by entry { $reading }; since then { $why }: look and shoot it again.
# $person (text) the person's name or initials
# $seq (text) the number of the entry
log_cut_or_rewritten = THE LOG WAS CUT OR REWRITTEN: { $person }'s phone remembers entry { $seq }, which this log does not hold.
# $day (text) the day's name
day_opened = Day { $day } opened.
# $down (text) the set-ups that were taken down
counts_no_more = { $down } counts no more: set up anew.
day_before_never_closed = The day before was never closed.
# $many (text) how many
things_are_open_from_before = { $many } things are open from before.
# $day (text) the day's name
day_closed = Day { $day } closed.
empty = EMPTY: nothing was read and nothing was called.
# $set_up (text) the laser set-up as people read it: SETUP-1
closed_unproven = CLOSED UNPROVEN: { $set_up } has no closing check, nothing on it since its last good one is proven.
# $missing (text) what is missing
# $why (text) the reason, as it was said or found
closed_over = Closed over “{ $missing }”: { $why }.
# $list (text) the things of this kind, as a list
open = Open: { $list }.
# $day (text) the day's name
# $signature (text) who signed
# $seq (text) the number of the entry
# $code (text) the first letters of the head
day_signed_by_up_entry = Day { $day } signed by { $signature }, up to entry { $seq }, head code { $code }.
the_day_is_empty = THE DAY IS EMPTY.
closed_unproven_2 = CLOSED UNPROVEN.
on_site = ON SITE
off_site = OFF SITE
# $who (text) who
as_has_seen = , as { $who } has seen
# $person (text) the person's name or initials
# $what (text) what is meant, in this language
# $by (text) by how much, or by whom
visitor_is = Visitor { $person } is { $what }{ $by }.
# $person (text) the person's name or initials
shown_no_run_any_more = { $person } is shown no run any more.
# $person (text) the person's name or initials
# $targets (text) the runs' names
is_shown = { $person } is shown { $targets }.
# $b (text) the second one
# $what (text) what is meant, in this language
inspection_asked_of = Inspection asked of { $b }: { $what }.
# $signature (text) who signed
inspection_signed_by = Inspection signed by { $signature }.
# $what (text) what is meant, in this language
# $why (text) the reason, as it was said or found
the_inspection_of_is_void = The inspection of { $what } is VOID: { $why }. Ask for another.
passed = PASSED
passed_in_part = PASSED IN PART
not_passed = NOT PASSED
# $conditions (text) what was asked for besides; empty or a sentence of its own with a blank before it
conditions = { " " }Conditions: { $conditions }.
# $inspector (text) who inspected
# $what (text) what is meant, in this language
# $result (text) how it came out
# $words (text) what somebody wrote
# $items (text) what was shown
# $conditions (text) what was asked for besides; empty or a sentence of its own with a blank before it
inspected = { $inspector } inspected { $what }: { $result }. { $words }. Shown: { $items }.{ $conditions }
stop_until_answered = STOP UNTIL ANSWERED
carry_on = carry on
# $query (text) the query's name
# $b (text) the second one
# $on (text) on what, or of what
# $what (text) what is meant, in this language
# $question (text) the question
to_about = { $query } to { $b } about { $on }, { $what }: { $question }
# $revision (text) the number of the revision
# $target (text) the target's name
carried_out_by_revision_of = { " " }Carried out by revision { $revision } of { $target }.
# $query (text) the query's name
# $answered_by (text) who answered
# $answer (text) the answer
# $what (text) what is meant, in this language
answered_by = { $query } answered by { $answered_by }: { $answer }.{ $what }
# $of (text) of how many, or of whom
photo_taken_of = Photo taken of { $of }.
photo_taken = Photo taken.
# $entry (text) the number of the entry
with_entry = With entry { $entry }.
# $taken_by (text) who took it
# $why (text) the reason, as it was said or found
photo_took_not_waited_for = The photo that { $taken_by } took is not waited for any more: { $why }
# $taken_by (text) who took it
# $kb (text) how many kilobytes
photo_took_has_come_kb = The photo that { $taken_by } took has come, { $kb } kB.
# $seq (text) the number of the entry
log_cut_by_its_index = THE LOG WAS CUT: its index remembers entry { $seq }, which this log does not hold.
