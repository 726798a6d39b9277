### What confirming a person is refused for. Portuguese, read by no native speaker.

phone_goes_by_another_name = Esse celular usa outro nome agora. Olhe a lista de novo.
nobody_confirms_themselves = Ninguém confirma a si mesmo. Outro supervisor confirma, ou quem está no notebook.
