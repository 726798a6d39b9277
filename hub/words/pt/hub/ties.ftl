### What ties are refused for. Portuguese, read by no native speaker.

of = { $mark }: { $error }
tapes_lie_one_line_place = { $mark }: as trenas ficam em uma só linha e o lugar escorrega. Tome outro par.
by_these_tapes_lies_from = Por estas trenas { $mark } fica a { $off } de onde o projeto a tem; trenas ali valem ±{ $doubt_ft } ft. Segure as duas em nível, veja onde as pontas estão presas, e leia de novo.
