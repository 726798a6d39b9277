### Who comes in and goes out, as sentences. Portuguese, read by no native speaker.

asks_to_come_in_at = { $person }{ $others } pede para entrar em { $machine }.
no_answer = Sem resposta: { $person } pede de novo em { $machine }.
is_not_coming_in_at = { $person } não vai entrar em { $machine }.
wait_said_to = { $machine }: ESPERE, dito a { $person }.
no_said_to = { $machine }: NÃO, dito a { $person }. { $why }
holds_bucket_down = { $machine }: { $operator } mantém CAÇAMBA NO CHÃO.
holds_bucket_down_for = { $machine }: { $operator } mantém CAÇAMBA NO CHÃO para { $people }.
is_in_at = { $person }{ $others } está DENTRO em { $machine }.
unconfirmed_entry = ENTRADA NÃO CONFIRMADA: { $person }{ $others } está DENTRO em { $machine }.
saw_out_at = { $who } viu { $person } FORA em { $machine }: { $why }
out_said_from_another_phone = { $person } está FORA em { $machine }, dito de outro celular com esse nome.
is_out_at = { $person } está FORA em { $machine }.
has_seen_out = { $person } viu isso, e está fora em { $machine }.
not_released = { $machine } NÃO SE RETOMA: { $people } dentro.
released = { $machine } retoma.
no_link_to = SEM CONEXÃO com { $person }.
link_to_is_back = A conexão com { $person } voltou.
