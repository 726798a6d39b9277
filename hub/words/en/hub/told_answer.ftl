### The answer to who told a machine to dig.

# $machine (text) the machine's name
nobody_told_by_this_log = Nobody told { $machine } by this log to dig here in this time.
# $who (text) who
# $machine (text) the machine's name
# $call (text) the number of the call
told = { $who } told { $machine }: { $call }.
# $deepest (text) the most
no_call_asked_for_bottom = No call asked for a bottom below { $deepest }.
over_the_line = OVER the line
inside_the_line = inside the line
# $away (text) how far away
# $what (text) what is meant, in this language
# $line (text) the line: its name, or what a call says
# $guard (text) how sure: plus or minus
edge_taped_give_or_take = The edge was taped { $away } { $what } { $line }, give or take { $guard }.
