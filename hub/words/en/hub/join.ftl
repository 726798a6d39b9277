### What joining is refused for.

type_your_name_or_initials = Type your name or initials.
that_name_is_too_long = That name is too long. Initials are enough.
log_calls_laptop_hub = The log calls the laptop “hub”. Type your own name or initials.
pick_what_you_do_this = Pick what you do on this site.
pick_machine_this_phone_sits = Pick the machine that this phone sits in.
# who is at the laptop, until a name is typed
truck = truck
