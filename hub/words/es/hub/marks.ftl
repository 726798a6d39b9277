### What laying or checking marks is refused for.

which_marks = cuáles marcas
one_these_marks_laid_or = Una de estas marcas se puso o se borró después de que usted lo dijo.
has_no_ties_whose_ends = { $mark } no tiene amarres cuyas puntas sigan en pie. Mida de una estaca, un hilo o el control.
of = { $mark }: { $error }
