### What an amendment is refused for. Portuguese, read by no native speaker.

what_read_with_entry = o que se deve ler junto com o lançamento
the_log_has_no_entry = O registro não tem o lançamento { $entry }.
that_day_is_not_signed = Esse dia não está assinado. Escreva uma nota; a emenda vai embaixo de um dia assinado.
