### What every printed sheet says.

head_chain_entry = Cabeza de la cadena en el asiento{ " " }
whoever_holds_this_sheet_can = Quien tenga esta hoja puede probar que el registro no se cambió hasta este asiento. Prueba lo que se escribió, no que alguien lo vio ni que una lectura fue cierta.
a_reminder_not_a_guard = Un recordatorio, no un guardián: nada de esto se midió solo. El ingeniero responsable, las normas, el aviso de excavación y la persona competente valen más que lo impreso aquí.
none = Ninguno.
profile_of = Perfil de
stations_in_feet = Estaciones en pies. Franja: lo permitido. Bigote: la duda. Hueco, ?: lea otra vez. Permitido{ " " }
