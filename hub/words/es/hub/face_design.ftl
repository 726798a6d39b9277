### What a face's design is refused for.

what_changed_in_the_soil = qué cambió en el suelo
whose_design_where_written = de quién es el diseño y dónde está escrito
