/** Spanish words of CONTROL alone: they come with it. */
import type { controlEn } from "./en";

export const controlEs: typeof controlEn = {
  which: "¿Qué se hace?",
  tasks: {
    type_again: "ESCRIBIR OTRA VEZ: cotas de una rasante, por otra persona",
    levels: "NIVELACIÓN: por puntos de cambio",
    turned: "PRUEBA DEL LÁSER: girado por cuartos",
    two_peg: "PRUEBA DEL LÁSER: dos estacas",
    compare: "DOS LÁSERES en un punto",
  },
  send: "ENVIAR",
  target: "Rasante",
  laser: "Láser",
  allTyped: "Toda cota escrita ya la escribió también otra persona.",
  unseen:
    "Escriba desde el plano, no desde la pizarra. Lo que difiere se guarda, ambos valores; nada se cambia.",
  levelsNote:
    "Anote cada puesta como en la libreta. La nivelación cierra en un banco; fuera de tolerancia no se ajusta nada.",
  from: "Desde el banco",
  to: "Cierra en el banco",
  setUp: (number) => `Puesta ${number}`,
  behind: (point) => `Lectura atrás: estadal en ${point || "el punto de atrás"}`,
  ahead: (point) => `Lectura adelante: estadal en ${point || "el punto de adelante"}`,
  point: "Punto",
  oneMore: "UNA PUESTA MÁS",
  oneLess: "UNA MENOS",
  notes: {
    turned:
      "Un estadal, a 100 pies o más. Lea; gire el láser media vuelta y lea otra vez; lo mismo con el otro eje.",
    two_peg: "Lea las dos estacas desde el medio, luego las dos desde cerca de la estaca A.",
  },
  read: {
    distance: "Del láser al estadal, pies",
    first: "Primer eje hacia el estadal",
    first_turned: "Primer eje, media vuelta",
    second: "Segundo eje hacia el estadal",
    second_turned: "Segundo eje, media vuelta",
    middle_a: "Estaca A desde el medio",
    middle_b: "Estaca B desde el medio",
    near_a: "Estaca A desde cerca de A",
    far_b: "Estaca B desde cerca de A",
    to_a: "Del láser a la estaca A, pies",
    to_b: "Del láser a la estaca B, pies",
  },
  twoNeeded: "Deben estar puestos dos láseres.",
  compareNote:
    "Deje el estadal en un punto firme y léalo desde los dos. Si difieren más de 0.02 pies, revise ambos.",
  rodFrom: (setUp) => `Estadal, leído desde ${setUp || "él"}`,
  takeBenchmark: "TOMAR UN PUNTO NIVELADO COMO BANCO",
  misses: (by, allowed) => `difiere ${by} pies de ${allowed} permitidos.`,
  newName: "Nombre del banco nuevo",
  looks: "Cómo se ve y dónde está",
};
