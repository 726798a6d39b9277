### An edge against a line that must not be crossed. Portuguese, read by no native speaker.

word = LINHA
left = LINHA { $amount }
crossed = PARE – LINHA CRUZADA
touched = LINHA TOCADA
warning-crossed = LINHA CRUZADA
warning-touched = TOCADA
inside = { $feet } dentro ± { $doubt }
over = { $feet } além ± { $doubt }
