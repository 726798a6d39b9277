### Why there is no advice on the aim.

too_few = { $has } pasadas de acabado son pocas para decir a dónde apuntar: hacen falta { $fewest }. Siga como el plano.
no_room = La tolerancia no deja lugar para una dispersión de { $sd } ft. Apunte a la rasante y lea más seguido.
