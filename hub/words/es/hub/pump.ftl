### What a word about water that is pumped out is refused for.

somebody_said_that_water_stands = Alguien avisó que hay agua ahí después de lo que mostraba esta página.
