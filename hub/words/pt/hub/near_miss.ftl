### What a near miss is refused for. Portuguese, read by no native speaker.

what_happened_what_done_about = o que aconteceu, e o que se fez a respeito
