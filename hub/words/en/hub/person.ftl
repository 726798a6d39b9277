### What confirming a person is refused for.

phone_goes_by_another_name = That phone goes by another name now. Look at the list again.
nobody_confirms_themselves = Nobody confirms themselves. Another supervisor does it, or whoever sits at the laptop.
