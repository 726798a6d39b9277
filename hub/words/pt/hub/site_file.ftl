### What is wrong with a site file or a draft of it. Portuguese, read by no native speaker.

has_no = { $what } não tem `{ $key }`. Acrescente.
must_text_quotes_length_with = `{ $key }` deve ser texto entre aspas, uma medida com sua unidade: { $key } = "98.50 ft".
must_be_a_number = `{ $key }` deve ser um número.
must_be_text_in_quotes = `{ $key }` deve ser texto entre aspas.
must_be_true_or_false = `{ $key }` deve ser true ou false.
not_number_within_1_000 = `{ $key }`: “{ $text }” não é um número entre -1,000,000,000 e 1,000,000,000.
must_list_brackets = `{ $key }` deve ser uma lista entre colchetes.
must_point_east_then_north = `{ $key }` deve ser um ponto, leste e depois norte: ["12.00 ft", "30.00 ft"].
give_mark_either_or_station = Dê a uma marca `at`, ou `station` e `offset`, não os dois.
a_station_needs_a_target = Uma estaca precisa de um greide: diga ao longo de qual trecho ela conta, ou dê o lugar da marca.
station_counts_along_which_not = A estaca conta ao longo de “{ $name }”, que não é um greide desta obra, ou tem seus próprios defeitos.
is_not_a_run = “{ $name }” não é um trecho: dê o lugar da marca em vez de uma estaca.
give_target_exactly_one_shape = Dê a um greide exatamente uma forma: { $shapes }.
steeper_than_one_one = “{ $text }” é mais íngreme que um para um. Escreva uma queda de dois pés em cem como "-2 %".
is_not_a_rise = “{ $text }” não é uma inclinação. Escreva "2 %" ou "-1.5 %".
run_needs_least_one_step = Um trecho precisa de pelo menos um degrau: steps = [{ "{" } from = "0 ft", elevation = "99.50 ft", window = "0 ft" { "}" }].
has_no_triangles_to_keep = “{ $target }” não tem triângulos a guardar. Nomeie seu arquivo: file = "ground.csv".
file_coordinates_are_plan_but = As coordenadas do arquivo são do projeto, mas a obra não tem [frame]. Acrescente um, ou deixe `on_plan` de fora.
cant_be_read = “{ $file }” não pode ser lido ({ $why }). É procurado ao lado do arquivo da obra.
has_several_surfaces = “{ $file }” tem várias superfícies ({ $names }). Diga qual é este greide: name = "{ $several }".
this_target_has_no_tolerance = Este greide não tem tolerância, e a obra não tem uma geral. Acrescente tolerance = { "{" } high = "0.10 ft", low = "0.20 ft" { "}" } ou uma tabela [tolerance].
say_which_surface_this_target = Diga de qual superfície é a cota deste greide: surface = "top of footing". Um número sozinho pode ser de qualquer uma.
check_good_must_above_zero = `check_good` deve ser maior que zero e não maior que `check_warn`.
height_forms_must_above_zero = `height` das fôrmas deve ser maior que zero.
must_number_above_zero = `{ $key }` deve ser um número maior que zero.
not_there_yet = { $name }: ainda falta. Dê.
at = `{ $key }`: { $what }
not_of_the_list = `{ $key }`: não é da lista ({ $why }).
the_site_file = o arquivo da obra
this = { $key }
