### What every printed sheet says. Portuguese, read by no native speaker.

head_chain_entry = Cabeça da cadeia no lançamento{ " " }
whoever_holds_this_sheet_can = Quem tem esta folha pode provar que o registro não foi mudado até este lançamento. Prova o que foi escrito, não que alguém viu nem que uma leitura era verdadeira.
a_reminder_not_a_guard = Um lembrete, não uma proteção: nada aqui foi detectado. O engenheiro responsável, as normas locais, a localização e a pessoa competente vêm antes de tudo o que está impresso aqui.
none = Nenhum.
profile_of = Perfil de
stations_in_feet = Estacas em pés. Faixa: o permitido. Bigode: a dúvida. Vazado, ?: leia de novo. Permitido{ " " }
