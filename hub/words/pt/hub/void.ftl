### Why something does not count any more. Portuguese, read by no native speaker.

moved = o terreno se moveu { $by }
revised = { $target } foi revisado ali
laser = { $set_up } tinha se movido
rain = choveu nele
water = ficou debaixo d'água
slough = { $zone } caiu ao lado
