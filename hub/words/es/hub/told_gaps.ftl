### What the log does not say about a call.

call = Orden { $id }, { $line }: ninguna pantalla la mostró.
call_2 = Orden { $id }, { $line }: se mostró, y nadie apretó ENTENDIDO.
screen_not_showing = La pantalla en { $machine } no se veía.
no_screen_had_joined_for = Ninguna pantalla había entrado para { $machine }.
no_rod_reading_within = Ninguna lectura a menos de { $near }.
before_the_first = antes de la primera
at_all = en absoluto
no_tape_to_within = Ninguna cinta a { $id } a menos de { $near } { $what }.
no_good_check_before_first = { $name }: sin comprobación buena antes de la primera de estas órdenes.
no_good_check_after_last = { $name }: sin comprobación buena después de la última, y nada que valga de ambos modos.
no_mark_lies_within = No hay marca a menos de { $near }.
nobody_said_from_what_laid = { $id }: nadie dijo de qué se puso.
no_second_person_measured_where = { $id }: ninguna segunda persona la midió donde está ahora.
no_photo_mark_within_reach = Ninguna foto de una marca al alcance.
calls_to_named_no_mark = { $many } órdenes a { $machine } no nombraron marca: pueden haber sido de este lugar.
