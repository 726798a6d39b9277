### What a load is refused for. Portuguese, read by no native speaker.

what_is_in_the_truck = o que o caminhão leva
the_ticket_number = o número do tíquete
what_was_measured_and_how = o que foi medido, e como
