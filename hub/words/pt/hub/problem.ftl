### Why a request came to nothing. Portuguese, read by no native speaker.

there_no_site_or_no = Não há obra ou não há dia aberto: ainda nada a imprimir.
the_hub_is_stopping = O servidor está parando. Envie de novo quando ele voltar.
that_is_too_large = Isso é grande demais. Envie menos de uma vez.
this_phone_is_not_in = Este celular não entrou. Escaneie o código da caminhonete.
this_request_comes_from_another = Este pedido vem da página de outro site. Abra o servidor pelo código da caminhonete.
that_code_is_void = Esse código não vale mais. Escaneie o código de hoje na caminhonete.
too_many_tries = Tentativas demais. Espere um minuto, depois tente de novo.
came_too_slowly_dropped = Veio devagar demais e foi largado. Será enviado de novo; chegue mais perto da caminhonete.
there_nothing_this_address = Não há nada neste endereço. Abra o servidor pelo código da caminhonete.
the_log_has_no_entry = O registro não tem o lançamento { $seq }.
log_cant_read_just_now = O registro não pode ser lido agora. O terminal do servidor diz por quê.
the_log_has_no_day = O registro não tem o dia { $day }. Tem: { $known }.
file_this_photo_missing_or = O arquivo desta foto falta ou foi mexido desde que chegou. O registro ainda nomeia seu hash; `rodcall verify` diz mais.
photo_cant_kept_or_read = A foto não pode ser guardada nem lida agora. O terminal do servidor diz por quê. Uma foto em um celular continua lá.
there_no_site_day = Não há obra nesse dia: nada a rever.
there_is_no_site_yet = Ainda não há obra. Inicie o servidor com um arquivo da obra.
malformed = O pedido está malfeito. { $why }
no_room_for_photo = O disco do notebook está quase cheio: o resto fica para o registro. A foto continua no celular, e é enviada de novo quando houver espaço.
stop_not_kept = PARE está em cada tela que tem conexão, mas não está no registro: o servidor não consegue mais escrever. Use também sinais com as mãos; anote quem parou e quando; é preciso iniciar o servidor de novo.
busy = O servidor está ocupado. Será enviado de novo.
closing = O servidor está fechando. Será enviado de novo quando ele voltar.
not_kept = Não guardado: o servidor não consegue mais escrever seu registro. Use sinais com as mãos; é preciso iniciar o servidor de novo.
