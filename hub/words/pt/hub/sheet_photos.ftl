### Photos on sheets. Portuguese, read by no native speaker.

promised_by = Prometida por{ " " }
not_waited_for_any_more = { " " }e não se espera mais:{ " " }
promised_and_not_delivered = Prometida e não entregue: ainda no celular de{ " " }
entry = lançamento{ " " }
with_entry = , com o lançamento{ " " }
not_shown = NÃO MOSTRADA: o arquivo desta foto foi mexido depois que chegou. Seus bytes não dão o hash que o registro nomeia.
not_shown_2 = NÃO MOSTRADA: o arquivo desta foto falta na pasta de dados.
face = talude
photo = foto
printed_smaller = As fotos desta folha podem estar impressas menores do que chegaram. Cada SHA-256 é o da foto como chegou, que fica guardada com o registro: quem tem esse arquivo pode prová-la.
