### The sheet of the marks as built.

final_differences = Diferencias finales
not_proven = Sin probar
as_built = Cómo quedó
nobody_has_read_a_mark = Nadie ha leído una marca.
spot_elevations = Elevaciones sueltas
mark = marca
dig_to_ft = #cavar a, ft
got_ft = #quedó, ft
difference = #diferencia
doubt = #duda ±
at = hora
by = quién
laser = láser
shots = #lecturas
standing = *cómo está
none = Ninguna.
histogram_of_final_differences = Histograma de diferencias finales
low = HONDO
high_feet = ALTO, pies
run = zanja
length_ft = #largo, ft
readings = #lecturas
not_proven_ft = #sin probar, ft
stations = estaciones
