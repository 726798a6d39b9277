### What ties are refused for.

of = { $mark }: { $error }
tapes_lie_one_line_place = { $mark }: las cintas quedan en una línea y el lugar se corre. Tome otro par.
by_these_tapes_lies_from = Con estas cintas { $mark } queda a { $off } de donde dice el plano; ahí las cintas dan ±{ $doubt_ft } ft. Téngalas a nivel, vea dónde están sus puntas y léalas otra vez.
