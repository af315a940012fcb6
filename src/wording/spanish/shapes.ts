import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

/** Why shapes are refused, in Spanish. */
export const shapes: RefusalTexts["shapes"] = {
  cornersFromTo: ({ least, most }) => sentence`escriba una lista de ${least} a ${most} esquinas`,
  listOf: ({ count }) => sentence`una lista de ${count}`,
  cornersOnOneLine: () => "las esquinas están en una sola línea",
  edgeWithoutLength: ({ from, to }) => sentence`el borde de la esquina ${from} a la ${to} no tiene longitud; dé cada esquina una vez, el contorno se cierra solo`,
  edgeFoldsBack: ({ from, to }) => sentence`el borde de la esquina ${from} a la ${to} regresa sobre el anterior`,
  edgesMeet: ({ from, to, otherFrom, otherTo }) => sentence`el borde de la esquina ${from} a la ${to} toca el borde de la esquina ${otherFrom} a la ${otherTo}`,
  curvedTop: () => "un remate curvo no se traza; trace la pared debajo de él, o el rectángulo que lo encierra, con la curva cortada de lo que se traza",
  noArea: () => "no tiene área",
  innerCorner: () => "un contorno con una esquina entrante no se traza; trace sus partes, o el rectángulo que lo encierra, con un vano en cada esquina que falta",
};
