### What proves the laser, as sentences. Portuguese, read by no native speaker.

readings_marks_judged_both_ways = { $readings } leituras de { $set_up } em { $marks } marcas julgadas dos dois jeitos ({ $residual }): leia de novo { $again }; { $stand } valem.
readings_marks_are_unproven = { $readings } leituras de { $set_up } em { $marks } marcas estão SEM COMPROVAÇÃO: { $unproven }.
it_was_bumped = bateram nele
repeats_do_not_agree = as repetições não concordam
not_checked_for_twice_interval = NÃO CONFERIDO pelo dobro do prazo
the_interval_has_passed = o prazo passou
n25_readings_since = 25 leituras desde então
the_temperature_changed = a temperatura mudou
work_starts_again = o trabalho recomeça
check_of_is_due = Hora de conferir { $set_up }: { $what }.
everything_is_found_higher = { " " }Tudo sai MAIS ALTO: confira o laser já.
everything_is_found_lower = { " " }Tudo sai MAIS FUNDO: confira o laser já.
repeated_from = { $mark } repetida de { $set_up }: { $off } contra o aceito.{ $what }
the_reading_was_right = a leitura estava certa
slip_one_suggested = um erro, e o sugerido
a_slip_another_than_suggested = um erro, outro que o sugerido
question_answered = Pergunta { $question } respondida: { $what }.
to_service = : PARA A ASSISTÊNCIA
tested = { $laser } testado: { $found } em 100 pés{ $what }.
levels_from_to = Nivelamento de { $from } a { $to }: { $turns } estações, difere { $misclosure }, ajustado.
benchmark_added_at = RN { $benchmark } acrescentada em { $elevation }: { $note }
they_agree = concordam
check_both = CONFIRA OS DOIS
one_point_from_and = Um ponto de { $first } e { $second }: { $off }, { $what }.
shot_twice_second_time_blind = { $mark } lida duas vezes, a segunda às cegas ({ $names }): { $off }.
