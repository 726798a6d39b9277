### What a photo is refused for.

photo_has_no_proper_name = That photo has no proper name. Open the page again and take it anew.
photo_has_no_proper_hash = That photo has no proper hash: SHA-256 in 64 lower-case hex digits. Open the page again and take it anew.
those_are_not_bytes_were = Those are not the bytes that were promised for this photo: its hash differs. Take a new one.
why_photo_will_not_come = why the photo will not come
