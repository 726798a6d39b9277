### What is open, and what is to be done. Portuguese, read by no native speaker.

may_still_keep_out = { $person } ainda pode estar na zona proibida de { $machine }: ninguém disse JÁ SAÍ.
is_stopped_by = { $machine } está parada por { $by }: { $why }
has_not_said_off_site = { $person } não disse JÁ SAÍ DA OBRA.
is_not_closed = { $name } não está encerrado: { $why }
everybody_had_get_away_from = Todos tiveram que se afastar de { $zone }; ninguém embaixo antes de a pessoa competente o inspecionar.
waits_for_an_inspection = { $zone } espera uma inspeção.
pins_move = { $zone } está sob vigia: seus pinos se movem.
measured_with_while_doubt = { $mark }: medida com { $set_up } quando estava em dúvida; leia de novo.
no_good_check_after_its = { $name }: nenhuma conferência boa depois de sua última leitura. Leia uma RN.
has_not_answered = { $id }: { $asked } não respondeu: { $question }
has_not_inspected_it = { $what }: { $of } não inspecionou.
inspection_does_not_count_any = { $what }: a inspeção não vale mais, em { $mark } { $since }; peça outra.
photo_still_phone = Uma foto ainda está no celular de { $who }.
call_to = Ordem { $id } a { $machine }, { $at } { $line }: nenhuma tela a mostrou.
question_entry_has_no_answer = { $mark }: a pergunta do lançamento { $id } não tem resposta.
two_people_typed_it_differently = { $target }: duas pessoas o digitaram diferente.
typed_by_one_alone = { $target } r{ $revision }: ninguém o digitou uma segunda vez.
its_paint_is_gone = { $id }: sua pintura se apagou.
accepted_but_since = { $id }: aceita, mas depois { $what }; olhe e leia de novo.
was_before_its_target_changed = { $id } era { $dev } antes de seu greide mudar: leia de novo.
stands_high_by = { $id } está ALTO { $dev }: nunca chegou à cota.
is_low_by = { $id } está FUNDO { $dev }: sem remendo nem decisão.
too_close_call_nobody_has = { $id }, { $dev }: no limite, e ninguém decidiu.
nobody_has_read = { $target }: ninguém leu { $names }.
not_proven_stations = { $run }: { $all } não comprovados, estacas { $where }.
not_proven_no_tape_at = { $line }: não comprovada, sem trena em { $names }.
the_soil_test_failed = { $mark }: o teste de solo não passou; teste de novo.
soil_test_does_not_count = { $mark }: o teste de solo não vale mais; teste de novo.
at_cy_is_not_done = { $name } em { $mark }, { $cy } yd³, não está pronto.
gravel_order_t_short_what = À brita pedida faltam { $short } t para bastar nove vezes em dez.
undercut_waits_for_supervisor_engineer = A sobrescavação em { $mark } espera um supervisor com a palavra do engenheiro.
no_soil_test_log = { $target }: não há teste de solo no registro.
is_watched = { $many ->
        [one] { $zone } está sob vigia: { $many } coisa foi vista nele.
       *[other] { $zone } está sob vigia: { $many } coisas foram vistas nele.
    }
