### What a photo is refused for.

photo_has_no_proper_name = Esa foto no tiene nombre válido. Abra la página otra vez y tómela de nuevo.
photo_has_no_proper_hash = Esa foto no tiene huella válida: SHA-256 en 64 dígitos hexadecimales. Abra la página otra vez y tómela de nuevo.
those_are_not_bytes_were = Ese no es el contenido que se anunció para esta foto: su huella es otra. Tome una nueva.
why_photo_will_not_come = por qué no va a llegar la foto
