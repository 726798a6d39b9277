### Why a text is no reading of a rod. Portuguese, read by no native speaker.

negative = “{ $text }” fica abaixo do pé da mira. Digite sem o menos; se o terreno está acima do laser, instale o laser mais alto.
above_top = “{ $text }” passa do topo da mira { $rod }, que tem { $length }. Confira o ponto decimal e qual mira é.
inches_past_twelve = “{ $text }” tem { $inches } polegadas: depois dos pés vêm menos de 12. Confira os pés, depois as polegadas.
how-hundredths = A mira { $rod } está marcada em pés e centésimos: digite como 5.42.
how-eighths = A mira { $rod } está marcada em pés, polegadas e oitavos: digite como 7-10 3/8.
how-metres = A mira { $rod } está marcada em metros: digite como 1.234.
empty = Nenhuma leitura foi digitada. { $how }
not_a_reading = “{ $text }” não é uma leitura da mira { $rod }. { $how }
