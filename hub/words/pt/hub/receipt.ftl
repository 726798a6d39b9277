### What an answer to a call is refused for. Portuguese, read by no native speaker.

number_not_cab_screen_now = Esse número não está agora na tela da cabine: algo mais grave está lá. ENTENDI conta quando o número tiver sido visto.
