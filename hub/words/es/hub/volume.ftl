### Why there is no volume.

uneven_rows = La fila { $row } de la cuadrícula tiene { $has } esquinas, la primera { $first }. Dé las mismas en cada fila; deje vacía la que nadie midió.
no_cells = La cuadrícula no tiene celda con cuatro esquinas conocidas. Tome las que faltan.
not_in_order = La sección { $number } no está después de la anterior. Dé las secciones en orden.
one_section = Una sección no hace volumen. Dé también la siguiente.
apart = Las dos superficies no están una sobre otra. Revise que las dos estén en la obra.
what-cells_length = largo de la celda
what-cells_width = ancho de la celda
what-strips_length = largo de la franja
what-strips_width = ancho de la franja
not_above = El { $what } debe ser mayor que 0. Revíselo.
