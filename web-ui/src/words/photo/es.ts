/** Spanish words of a photo that was just taken: they come with its script. */
import type { PhotoWords } from "./en";

export const photoEs: PhotoWords = {
  keep: "GUARDAR",
  throwAway: "TIRAR",
  about: "Qué muestra (puede quedar vacío)",
  reducing: "Se reduce la foto…",
  size: (width, height, kilobytes) => `${width} × ${height}, ${kilobytes} kB, sin lugar, hora ni aparato.`,
  nobodyInIt: "No hace falta la cara de nadie.",
  noPicture: "Este teléfono no puede leer ese archivo como imagen. Tírelo y tome la foto con la cámara.",
  withEntry: (entry) => `con el asiento ${entry}`,
};
