### What a word about rain is refused for.

somebody_said_that_it_stopped = Alguien avisó después que paró la lluvia.
somebody_said_that_it_rains = Alguien avisó que llueve después de lo que mostraba esta página.
