### What a word about water that is pumped out is refused for.

somebody_said_that_water_stands = Somebody said that water stands there after what this page showed.
