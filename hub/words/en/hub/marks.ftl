### What laying or checking marks is refused for.

which_marks = which marks
one_these_marks_laid_or = One of these marks was laid or scraped since you said that.
# $mark (text) the mark's name
has_no_ties_whose_ends = { $mark } has no ties whose ends still stand. Measure from a hub, a string or control.
# $mark (text) the mark's name
# $error (text) what is wrong, in this language
of = { $mark }: { $error }
