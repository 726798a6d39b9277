### What a word about rain is refused for.

somebody_said_that_it_stopped = Somebody has said since that the rain stopped.
somebody_said_that_it_rains = Somebody said that it rains after what this page showed.
