### What a check shot is refused for. Portuguese, read by no native speaker.

shot_made_before_laser_put = Essa leitura foi feita antes de o laser ser posto em dúvida: não comprova nada dele agora.
