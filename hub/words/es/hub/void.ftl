### Why something does not count any more.

moved = el suelo se movió { $by }
revised = { $target } se cambió ahí
laser = { $set_up } se había movido
rain = le llovió
water = estuvo bajo agua
slough = { $zone } se vino abajo al lado
