### What a face's design is refused for. Portuguese, read by no native speaker.

what_changed_in_the_soil = o que mudou no solo
whose_design_where_written = de quem é o projeto, e onde está escrito
