### What a query is refused for. Portuguese, read by no native speaker.

what_asked_whom_about_which = o que se pergunta, a quem, e sobre quais marcas ou greides
answer_who_gave_where_written = a resposta, quem a deu e onde está escrita
