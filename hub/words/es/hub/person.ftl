### What confirming a person is refused for.

phone_goes_by_another_name = Ese teléfono ya va con otro nombre. Mire la lista otra vez.
nobody_confirms_themselves = Nadie se confirma a sí mismo. Lo hace otro supervisor, o quien está en la computadora.
