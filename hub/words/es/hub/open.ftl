### What is open, and what is to be done.

may_still_keep_out = { $person } puede estar aún en la zona prohibida de { $machine }: nadie ha dicho YA SALÍ.
is_stopped_by = { $machine } está parada por { $by }: { $why }
has_not_said_off_site = { $person } no ha dicho YA SALÍ DE LA OBRA.
is_not_closed = { $name } no está cerrado: { $why }
everybody_had_get_away_from = Hubo que alejarse de { $zone }; nadie al pie hasta que la persona competente lo inspeccione.
waits_for_an_inspection = { $zone } espera una inspección.
pins_move = { $zone } se vigila: sus clavos se mueven.
measured_with_while_doubt = { $mark }: medida con { $set_up } cuando estaba en duda; lea otra vez.
no_good_check_after_its = { $name }: sin comprobación buena después de su última lectura. Lea un banco.
has_not_answered = { $id }: { $asked } no ha contestado: { $question }
has_not_inspected_it = { $what }: { $of } no lo ha inspeccionado.
inspection_does_not_count_any = { $what }: la inspección ya no vale, en { $mark } { $since }; pida otra.
photo_still_phone = Una foto sigue en el teléfono de { $who }.
call_to = Orden { $id } a { $machine }, { $at } { $line }: ninguna pantalla la mostró.
question_entry_has_no_answer = { $mark }: la pregunta del asiento { $id } no tiene respuesta.
two_people_typed_it_differently = { $target }: dos personas lo teclearon distinto.
typed_by_one_alone = { $target } r{ $revision }: nadie lo ha tecleado otra vez.
its_paint_is_gone = { $id }: se borró la pintura.
accepted_but_since = { $id }: estaba aceptada, pero { $what }; mírela y lea otra vez.
was_before_its_target_changed = { $id } estaba { $dev } antes de que cambiara su rasante: lea otra vez.
stands_high_by = { $id } está ALTO { $dev }: nunca llegó a nivel.
is_low_by = { $id } está HONDO { $dev }: sin parche ni decisión.
too_close_call_nobody_has = { $id }, { $dev }: muy justo para decir, y nadie ha decidido.
nobody_has_read = { $target }: nadie ha leído { $names }.
not_proven_stations = { $run }: { $all } sin probar, estaciones { $where }.
not_proven_no_tape_at = { $line }: sin probar, sin cinta en { $names }.
the_soil_test_failed = { $mark }: la prueba de suelo falló; repítala.
soil_test_does_not_count = { $mark }: la prueba de suelo ya no vale; repítala.
at_cy_is_not_done = { $name } en { $mark }, { $cy } yd³, no está hecho.
gravel_order_t_short_what = A la grava pedida le faltan { $short } t para que alcance nueve de diez veces.
undercut_waits_for_supervisor_engineer = La sobreexcavación en { $mark } espera al supervisor con palabra del ingeniero.
no_soil_test_log = { $target }: no hay prueba de suelo en el registro.
is_watched = { $many ->
        [one] { $zone } se vigila: se vio 1 cosa.
       *[other] { $zone } se vigila: se vieron { $many } cosas.
    }
