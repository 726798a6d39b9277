### Who comes in and goes out, as sentences.

# $person (text) the person's name or initials
# $others (text) how many come along, in this language; empty for one alone
# $machine (text) the machine's name
asks_to_come_in_at = { $person }{ $others } asks to come in at { $machine }.
# $person (text) the person's name or initials
# $machine (text) the machine's name
no_answer = No answer: { $person } asks again at { $machine }.
# $person (text) the person's name or initials
# $machine (text) the machine's name
is_not_coming_in_at = { $person } is not coming in at { $machine }.
# $machine (text) the machine's name
# $person (text) the person's name or initials
wait_said_to = { $machine }: WAIT, said to { $person }.
# $machine (text) the machine's name
# $person (text) the person's name or initials
# $why (text) the reason, as it was said or found
no_said_to = { $machine }: NO, said to { $person }. { $why }
# $machine (text) the machine's name
# $operator (text) who sits in the cab
holds_bucket_down = { $machine }: { $operator } holds BUCKET DOWN.
# $machine (text) the machine's name
# $operator (text) who sits in the cab
# $people (text) their names, with commas between
holds_bucket_down_for = { $machine }: { $operator } holds BUCKET DOWN for { $people }.
# $person (text) the person's name or initials
# $others (text) how many come along, in this language; empty for one alone
# $machine (text) the machine's name
is_in_at = { $person }{ $others } is IN at { $machine }.
# $person (text) the person's name or initials
# $others (text) how many come along, in this language; empty for one alone
# $machine (text) the machine's name
unconfirmed_entry = UNCONFIRMED ENTRY: { $person }{ $others } is IN at { $machine }.
# $who (text) who
# $person (text) the person's name or initials
# $machine (text) the machine's name
# $why (text) the reason, as it was said or found
saw_out_at = { $who } saw { $person } OUT at { $machine }: { $why }
# $person (text) the person's name or initials
# $machine (text) the machine's name
out_said_from_another_phone = { $person } is OUT at { $machine }, said from another phone in that name.
# $person (text) the person's name or initials
# $machine (text) the machine's name
is_out_at = { $person } is OUT at { $machine }.
# $person (text) the person's name or initials
# $machine (text) the machine's name
has_seen_out = { $person } has seen it, and is out at { $machine }.
# $machine (text) the machine's name
# $people (text) their names, with commas between
not_released = { $machine } NOT RELEASED: { $people } in.
# $machine (text) the machine's name
released = { $machine } released.
# $person (text) the person's name or initials
no_link_to = NO LINK to { $person }.
# $person (text) the person's name or initials
link_to_is_back = Link to { $person } is back.
