### What a ruling is refused for.

why_it_is_ruled_so = why it is ruled so
this_mark_read_again_after = This mark was read again after that ruling.
