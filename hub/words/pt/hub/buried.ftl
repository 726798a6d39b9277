### What is wrong with a buried line. Portuguese, read by no native speaker.

too_few_places = Uma linha enterrada precisa de dois pontos ou mais; esta tem { $places }.
upside_down = O topo { $top } fica abaixo do fundo { $bottom }. Veja qual é qual.
what-outside_diameter = diâmetro externo
what-zone = faixa ao lado da linha
negative = Medida “{ $what }”: { $value }. Dê zero ou mais.
