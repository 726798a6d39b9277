### What holds a call back, and what to do.

# $zone (text) the face's name
face_left = Nobody works under { $zone }: everybody had to get away from the face. The competent person inspects it and says why work goes on.
# $line (text) the line: its name, or what a call says
line_struck = A line was struck near it ({ $line }). Nobody digs there until its owner has seen it; the supervisor gives the reason.
# $zone (text) the face's name
daylight = The face of { $zone } would come to daylight over a line that nobody may cross. Ask the engineer; the supervisor gives the reason.
not_located = No locate ticket covers this place. Have it located; the supervisor gives the reason.
# $mark (text) the mark's name
not_located_at = No locate ticket covers this place ({ $mark }). Have it located; the supervisor gives the reason.
# $ticket (text) the ticket's name
ticket_lapsed = Ticket { $ticket } does not hold today. Ask for a new one; the supervisor gives the reason.
# $utility (text) the buried line's name
paint_gone = The paint of { $utility } is gone. Have it marked again before digging near it.
# $zone (text) the face's name
# $utility (text) the buried line's name
too_near = { $zone } crosses { $utility } too near. Ask the engineer before digging there.
# $query (text) the query's name
query = { $query } is not answered, and the work there waits for it. Carry on elsewhere; the supervisor enters the answer.
