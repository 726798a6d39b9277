### What a query is refused for.

what_asked_whom_about_which = qué se consulta, a quién, y sobre cuáles marcas o rasantes
answer_who_gave_where_written = la respuesta, quién la dio y dónde está escrita
