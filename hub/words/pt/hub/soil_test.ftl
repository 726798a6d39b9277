### Soil tests: what is stated, and what is refused. Portuguese, read by no native speaker.

who_tested = quem testou
test_belongs_elevation = Um teste pertence a uma cota: leia { $mark } primeiro, depois anote o teste.
say_what_bearing_drawing_asks = Diga que capacidade o projeto pede, em libras por pé quadrado.
say_laboratory_greatest_density_percentage = Diga a densidade máxima do laboratório e a porcentagem que se pede.
why_test_does_not_count = por que o teste não vale mais
lb_ft_stated_asked = { $stated_psf } lb/ft² declaradas, { $asked } pedidas
wet_lb_ft_dry = úmido { $wet_pcf } lb/ft³, seco { $dry }: { $of_the_greatest }; água { $water_percent } %{ $in_its_window }
of_asked = { $percent } % de { $maximum_pcf }, { $least_percent } % pedidos
of_the_greatest_density = { $percent } % da densidade máxima
too_dry_for = { ", " }SECO DEMAIS para { $window }
too_wet_for = { ", " }ÚMIDO DEMAIS para { $window }
within = { ", " }dentro de { $window }
