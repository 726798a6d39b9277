### Marks as sentences.

# $what (text) what is meant, in this language
# $marks (text) the marks: names, or how many
# $note (text) what somebody noted
laid_from = Laid from { $what }: { $marks }. { $note }
# $apart (text) how far apart
# $marks (text) the marks: names, or how many
measured_a_second_time_apart = Measured a second time, { $apart } apart: { $marks }.
# $marks (text) the marks: names, or how many
paint_gone = Paint gone: { $marks }.
# $mark (text) the mark's name
# $first (text) the first one
# $first_from (text) from where the first tape goes
# $second (text) the second one
# $second_from (text) from where the second tape goes
# $angle (text) in degrees
# $doubt (text) how sure: plus or minus
# $weak (text) `true` when the two tapes meet too flat
ties_of = Ties of { $mark }: { $first } from { $first_from }, { $second } from { $second_from }; they meet at { $angle }°, ±{ $doubt }.{ $weak ->
        [true] { " Weak: take another pair." }
       *[false] { "" }
    }
# $what (text) what is meant, in this language
# $base (text) the side A–B
# $across (text) the side B–C
# $one (text) the first one
# $other (text) the other one's name
# $wanted (text) how much or how many there should be
# $moves (text) which corners move, in this language
by = { $what }, { $base } by { $across }: diagonals { $one } and { $other }, both should be { $wanted }: { $moves }.
control = control
hubs = hubs
a_string = a string
their_ties = their ties
old_paint = old paint
