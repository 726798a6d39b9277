### What is wrong with a laser's tests, checks and transfers.

drift-doubt = La duda de una repetición es un número de pies mayor que 0, como 0.023.
window-no_time = La revisión mala no es posterior a la buena. Revise las dos horas y cuál es cuál.
sloped-slope = La pendiente del láser debe ser un número entre −0.25 y 0.25 pies por pie. Escriba 2 % como 0.02.
sloped-in_line = Las dos revisiones quedan en línea con el láser, donde no se nota un eje girado. Lea una bien a un lado.
transfer-disagree = El punto de liga sale con { $apart } de diferencia entre los dos láseres; se permite { $allowed }. Revise los dos en un banco.
transfer-planes_too_near = Los dos láseres están a { $apart } de altura uno del otro: el receptor puede confundirlos. Mueva uno por lo menos { $least }.
check_due-what-cost_of_a_check = El costo de una revisión
check_due-what-cost_of_an_hour = El costo de una hora sin darse cuenta
check_due-what-rate = La frecuencia con que se mueve el láser
check_due-not_above = { $what } debe ser un número mayor que 0. Ponga el dato de la obra.
