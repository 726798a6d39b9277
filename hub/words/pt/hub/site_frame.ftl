### What is wrong with the site's frame. Portuguese, read by no native speaker.

not_a_number = “{ $text }” não é uma coordenada do projeto. Escreva um número simples com no máximo 7 decimais, como 2000123.456.
too_far = Uma coordenada fica a mais de 100,000,000 ft da origem. Confira a origem, e se leste e norte estão trocados.
no_angle = O giro do sistema da obra não é um ângulo de -360 a 360. Dê em graus, positivo para a esquerda; 0 quando projeto e obra coincidem.
too_few_pins = { $pins } marcos achados não fixam o sistema da obra. Dê pelo menos dois afastados, cada um com seu lugar no projeto e o medido.
