### What a load is refused for.

what_is_in_the_truck = qué lleva el camión
the_ticket_number = el número del boleto
what_was_measured_and_how = qué se midió y cómo
