### What is wrong with a laser's tests, checks and transfers. Portuguese, read by no native speaker.

drift-doubt = A dúvida de uma repetição deve ser um número de pés acima de 0, como 0.023.
window-no_time = A conferência ruim não é posterior à boa. Confira as duas horas e qual é qual.
sloped-slope = A inclinação do laser deve ser um número entre −0.25 e 0.25 pés por pé em cada sentido. Escreva 2 % como 0.02.
sloped-in_line = As duas conferências ficam em uma só linha com o laser, onde um eixo girado não aparece. Leia uma bem para o lado.
transfer-disagree = O ponto de mudança sai com { $apart } de diferença entre as duas estações; são permitidos { $allowed }. Confira os dois lasers em uma RN.
transfer-planes_too_near = Os dois lasers estão a { $apart } um do outro em altura: um receptor pode confundir um com o outro. Mova um pelo menos { $least }.
check_due-what-cost_of_a_check = O custo de uma conferência
check_due-what-cost_of_an_hour = O custo de uma hora sem perceber
check_due-what-rate = A frequência com que o laser se move
check_due-not_above = { $what } deve ser um número acima de 0. Ponha o dado da própria obra.
