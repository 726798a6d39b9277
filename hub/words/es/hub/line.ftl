### An edge against a line that must not be crossed.

word = LÍNEA
left = LÍNEA { $amount }
crossed = PARE – LÍNEA CRUZADA
touched = EN LA LÍNEA
warning-crossed = LÍNEA CRUZADA
warning-touched = YA TOCA
inside = { $feet } adentro ± { $doubt }
over = { $feet } pasado ± { $doubt }
