### What a face's design is refused for.

what_changed_in_the_soil = what changed in the soil
whose_design_where_written = whose design it is, and where it is written
