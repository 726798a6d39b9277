### What proves the laser, as sentences.

readings_marks_judged_both_ways = { $readings } lecturas de { $set_up } en { $marks } marcas juzgadas de las dos maneras ({ $residual }): lea otra vez { $again }; { $stand } quedan.
readings_marks_are_unproven = { $readings } lecturas de { $set_up } en { $marks } marcas SIN COMPROBAR: { $unproven }.
it_was_bumped = lo golpearon
repeats_do_not_agree = las repeticiones no concuerdan
not_checked_for_twice_interval = SIN REVISAR por el doble del plazo
the_interval_has_passed = pasó el plazo
n25_readings_since = 25 lecturas desde entonces
the_temperature_changed = cambió la temperatura
work_starts_again = se reanuda el trabajo
check_of_is_due = Toca revisar { $set_up }: { $what }.
everything_is_found_higher = { " " }Todo sale MÁS ALTO: revise el láser ya.
everything_is_found_lower = { " " }Todo sale MÁS HONDO: revise el láser ya.
repeated_from = { $mark } repetida desde { $set_up }: { $off } contra lo aceptado.{ $what }
the_reading_was_right = la lectura estaba bien
slip_one_suggested = un error, y el que se sugirió
a_slip_another_than_suggested = un error, otro que el sugerido
question_answered = Pregunta { $question } contestada: { $what }.
to_service = : A SERVICIO
tested = { $laser } probado: { $found } en 100 pies{ $what }.
levels_from_to = Nivelación de { $from } a { $to }: { $turns } puestas, difiere { $misclosure }, ajustada.
benchmark_added_at = Banco { $benchmark } agregado en { $elevation }: { $note }
they_agree = concuerdan
check_both = REVISE LOS DOS
one_point_from_and = Un punto desde { $first } y { $second }: { $off }, { $what }.
shot_twice_second_time_blind = { $mark } leída dos veces, la segunda a ciegas ({ $names }): { $off }.
