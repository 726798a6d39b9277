### Where machines stand, near misses, and how a day begins, as sentences. Portuguese, read by no native speaker.

stands_at = { $machine } está em { $x }, { $y }.
has_moved = { $machine } se moveu; não se sabe onde está.
agreed_with = { $machine }: DE ACORDO com { $with }.
moved = { $machine } se moveu: o combinado com { $with } não vale mais.
spots_for = { $person } é sinaleiro de { $machine }.
spots_for_no_more = { $person } não é mais sinaleiro de { $machine }.
near_miss = Quase acidente { $number }: { $then }.
battery_low_hands_soon = bateria fraca, logo sinais
battery_charges = bateria carregando
can_meet_apart_needed = pode bater em { $other }, a { $apart }, precisa de { $needs }
tracks_inside_slope_competent_person = esteiras { $inside } dentro do declive de { $zone }, a pessoa competente decide
can_come_within_overhead_spotter = pode chegar a menos de { $clearance } da linha aérea { $line }, precisa de sinaleiro
its_tail_pinches_at_away = sua traseira prensa em { $at }, a { $apart }
place_unknown = { $machine } lugar desconhecido
near_miss_closed = { $name } encerrado: { $words }
day_ready = Dia PRONTO: { $said } de { $of } conferências
battery = { $machine }: { $what }{ $percent }.
near = { $machine }: { $each }.
keeps_out_of = { $machine } não entra nem gira para { $side }
