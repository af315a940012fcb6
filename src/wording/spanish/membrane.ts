import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

/** Why the functions for barriers refuse, in Spanish. */
export const membrane: RefusalTexts["membrane"] = {
  openingWide: ({ width }) => sentence`un vano de ${width} de ancho`,
  noWallSoWide: ({ widest }) => sentence`ninguna pared es más ancha que ${widest}`,
  openingsOf: ({ area }) => sentence`vanos de ${area}`,
  wallsHave: ({ area }) => sentence`las paredes no tienen más que ${area}`,
  bandsFromField: () => "las franjas salen de los paquetes del campo; no lo escriba",
  bandsNeedVolume: () => "las franjas de paquetes propios necesitan el volumen de uno de esos paquetes",
  roundHasNoParts: () => "un vano redondo no tiene antepecho ni jambas ni dintel",
  oneDepthAllRound: () => "dé un solo returnDepth para todo el contorno",
};
