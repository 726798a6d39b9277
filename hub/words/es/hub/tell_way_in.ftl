### Who comes in and goes out, as sentences.

asks_to_come_in_at = { $person }{ $others } pide entrar en { $machine }.
no_answer = Sin respuesta: { $person } pide otra vez en { $machine }.
is_not_coming_in_at = { $person } no va a entrar en { $machine }.
wait_said_to = { $machine }: ESPERE, dicho a { $person }.
no_said_to = { $machine }: NO, dicho a { $person }. { $why }
holds_bucket_down = { $machine }: { $operator } mantiene CUCHARÓN ABAJO.
holds_bucket_down_for = { $machine }: { $operator } mantiene CUCHARÓN ABAJO para { $people }.
is_in_at = { $person }{ $others } está ADENTRO en { $machine }.
unconfirmed_entry = ENTRADA SIN CONFIRMAR: { $person }{ $others } está ADENTRO en { $machine }.
saw_out_at = { $who } vio AFUERA a { $person } en { $machine }: { $why }
out_said_from_another_phone = { $person } está AFUERA en { $machine }, dicho desde otro teléfono con ese nombre.
is_out_at = { $person } está AFUERA en { $machine }.
has_seen_out = { $person } lo vio, y está afuera en { $machine }.
not_released = { $machine } NO SE REANUDA: adentro { $people }.
released = { $machine } se reanuda.
no_link_to = SIN ENLACE con { $person }.
link_to_is_back = Volvió el enlace con { $person }.
