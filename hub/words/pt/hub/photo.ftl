### What a photo is refused for. Portuguese, read by no native speaker.

photo_has_no_proper_name = Essa foto não tem nome válido. Abra a página de novo e tire outra.
photo_has_no_proper_hash = Essa foto não tem hash válido: SHA-256 em 64 algarismos hexadecimais minúsculos. Abra a página de novo e tire outra.
those_are_not_bytes_were = Esses não são os bytes prometidos para esta foto: o hash é outro. Tire uma nova.
why_photo_will_not_come = por que a foto não virá
