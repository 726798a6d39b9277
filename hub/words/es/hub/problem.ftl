### Why a request came to nothing.

there_no_site_or_no = No hay obra o no hay día abierto: todavía no hay qué imprimir.
the_hub_is_stopping = El servidor se está deteniendo. Mándelo otra vez cuando vuelva.
that_is_too_large = Es demasiado grande. Envíe menos a la vez.
this_phone_is_not_in = Este teléfono no ha entrado. Escanee el código de la caja.
this_request_comes_from_another = Esta solicitud viene de la página de otro sitio. Abra con el código de la caja.
that_code_is_void = Ese código ya no vale. Escanee el código de hoy en la caja.
too_many_tries = Demasiados intentos. Espere un minuto y pruebe otra vez.
came_too_slowly_dropped = Llegó muy despacio y se dejó. Se enviará otra vez; acérquese a la camioneta.
there_nothing_this_address = No hay nada en esta dirección. Abra el servidor con el código de la caja.
the_log_has_no_entry = El registro no tiene el asiento { $seq }.
log_cant_read_just_now = Ahora no se puede leer el registro. La terminal dice por qué.
the_log_has_no_day = El registro no tiene el día { $day }. Tiene: { $known }.
file_this_photo_missing_or = El archivo de esta foto falta o lo cambiaron desde que llegó. El registro aún nombra su huella; `rodcall verify` dice más.
photo_cant_kept_or_read = Ahora no se puede guardar ni leer la foto. La terminal dice por qué. La foto de un teléfono sigue ahí.
there_no_site_day = Ese día no tiene obra: no hay qué revisar.
there_is_no_site_yet = Todavía no hay obra. Arranque el servidor con un archivo de obra.
malformed = La solicitud está mal hecha. { $why }
no_room_for_photo = El disco de la computadora está casi lleno: lo que queda es para el registro. La foto sigue en el teléfono y se envía cuando haya lugar.
stop_not_kept = El PARE está en cada pantalla que tiene enlace, pero no en el registro: el servidor ya no puede escribir. Use también señas; apunte quién paró y cuándo; hay que arrancar el servidor otra vez.
busy = El servidor está ocupado. Se enviará otra vez.
closing = El servidor se está cerrando. Se enviará otra vez cuando vuelva.
not_kept = No se guardó: el servidor ya no puede escribir su registro. Use señas; hay que reiniciarlo.
