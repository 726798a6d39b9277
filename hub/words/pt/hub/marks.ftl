### What laying or checking marks is refused for. Portuguese, read by no native speaker.

which_marks = quais marcas
one_these_marks_laid_or = Uma destas marcas foi posta ou apagada depois que você disse isso.
has_no_ties_whose_ends = { $mark } não tem amarrações cujas pontas ainda estejam lá. Meça de um piquete, um fio ou do controle.
of = { $mark }: { $error }
