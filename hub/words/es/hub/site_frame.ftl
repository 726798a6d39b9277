### What is wrong with the site's frame.

not_a_number = «{ $text }» no es una coordenada del plano. Escriba un número con a lo más 7 decimales, como 2000123.456.
too_far = Una coordenada queda a más de 100,000,000 ft del origen. Revise el origen y si están cambiados este y norte.
no_angle = El giro del sitio no es un ángulo de -360 a 360. Délo en grados, positivo hacia la izquierda; 0 si plano y sitio coinciden.
too_few_pins = { $pins } puntos hallados no fijan el sitio. Dé por lo menos dos separados, cada uno con su lugar en el plano y el medido.
