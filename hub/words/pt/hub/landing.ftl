### Why there is no advice on the aim. Portuguese, read by no native speaker.

too_few = { $has } passadas de acabamento são poucas para dizer para onde apontar: precisa de { $fewest }. Siga como no projeto.
no_room = A tolerância não deixa lugar para uma dispersão de { $sd } ft. Aponte para o greide, e leia mais vezes.
