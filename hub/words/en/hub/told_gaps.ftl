### What the log does not say about a call.

# $id (text) its name
# $line (text) the line: its name, or what a call says
call = Call { $id }, { $line }: no screen has painted it.
# $id (text) its name
# $line (text) the line: its name, or what a call says
call_2 = Call { $id }, { $line }: painted, and nobody pressed GOT IT.
# $machine (text) the machine's name
screen_not_showing = The screen in { $machine } was not showing.
# $machine (text) the machine's name
no_screen_had_joined_for = No screen had joined for { $machine }.
# $near (text) how near
no_rod_reading_within = No rod reading within { $near }.
before_the_first = before the first
at_all = at all
# $id (text) its name
# $near (text) how near
# $what (text) what is meant, in this language
no_tape_to_within = No tape to { $id } within { $near } { $what }.
# $name (text) its name
no_good_check_before_first = { $name }: no good check before the first of these calls.
# $name (text) its name
no_good_check_after_last = { $name }: no good check after the last of these calls, and nothing that stands either way.
# $near (text) how near
no_mark_lies_within = No mark lies within { $near }.
# $id (text) its name
nobody_said_from_what_laid = { $id }: nobody said from what it was laid.
# $id (text) its name
no_second_person_measured_where = { $id }: no second person measured it where it lies now.
no_photo_mark_within_reach = No photo of a mark within reach.
# $many (text) how many
# $machine (text) the machine's name
calls_to_named_no_mark = { $many } calls to { $machine } named no mark: they may have been about this place.
