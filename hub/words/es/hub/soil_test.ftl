### Soil tests: what is stated, and what is refused.

who_tested = quién hizo la prueba
test_belongs_elevation = Una prueba va con una elevación: lea primero { $mark } y luego apunte la prueba.
say_what_bearing_drawing_asks = Diga qué capacidad pide el plano, en libras por pie cuadrado.
say_laboratory_greatest_density_percentage = Diga la densidad máxima del laboratorio y el porcentaje que se pide.
why_test_does_not_count = por qué ya no cuenta la prueba
lb_ft_stated_asked = { $stated_psf } lb/ft² declaradas, { $asked } pedidas
wet_lb_ft_dry = húmeda { $wet_pcf } lb/ft³, seca { $dry }: { $of_the_greatest }; agua { $water_percent } %{ $in_its_window }
of_asked = { $percent } % de { $maximum_pcf }, { $least_percent } % pedido
of_the_greatest_density = { $percent } % de la densidad máxima
too_dry_for = { ", " }MUY SECA para { $window }
too_wet_for = { ", " }MUY HÚMEDA para { $window }
within = { ", " }dentro de { $window }
