### Where machines stand, near misses, and how a day begins, as sentences.

stands_at = { $machine } está en { $x }, { $y }.
has_moved = { $machine } se movió; no se sabe dónde está.
agreed_with = { $machine }: DE ACUERDO con { $with }.
moved = { $machine } se movió: lo acordado con { $with } ya no vale.
spots_for = { $person } es señalero de { $machine }.
spots_for_no_more = { $person } ya no es señalero de { $machine }.
near_miss = Casi accidente { $number }: { $then }.
battery_low_hands_soon = batería baja, pronto señas
battery_charges = batería cargando
can_meet_apart_needed = puede topar con { $other }, a { $apart }, se necesitan { $needs }
tracks_inside_slope_competent_person = orugas { $inside } dentro de la pendiente de { $zone }, decide la persona competente
can_come_within_overhead_spotter = puede llegar a menos de { $clearance } de la línea aérea { $line }, se necesita señalero
its_tail_pinches_at_away = la cola aprisiona contra { $at }, a { $apart }
place_unknown = { $machine } lugar desconocido
near_miss_closed = { $name } cerrado: { $words }
day_ready = Día LISTO: { $said } de { $of } revisiones
battery = { $machine }: { $what }{ $percent }.
near = { $machine }: { $each }.
keeps_out_of = { $machine } no entra ni gira al { $side }
