### What a load is refused for.

what_is_in_the_truck = what is in the truck
the_ticket_number = the ticket's number
what_was_measured_and_how = what was measured, and how
