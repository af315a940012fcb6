import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";
import { limits as limitWords } from "./words.js";

/** Why exercises are refused, in Spanish. */
export const exercise: RefusalTexts["exercise"] = {
  giveWhole: () => "dé un número entero",
  giveLevel: () => "dé 1, 2 o 3",
  giveWholeFromTo: ({ least, most }) => sentence`dé un número entero de ${least} a ${most}`,
  inDraws: ({ count }) => sentence`en ${count} sorteos`,
  nothingDrawn: () => "los límites no dejan nada que sortear; el último sorteo dio esto",
  stepAboveNought: () => "el paso debe ser mayor que 0",
  tooManyValues: ({ most }) => sentence`son más de ${most} valores; tome un paso mayor`,
  limit: ({ limit, value }) => sentence`${limitWords[limit]} ${value}`,
  whole: () => "un número entero",
  nothingLeft: ({ limits }) => sentence`no queda nada que sortear: debe ser ${limits.map(({ words }) => words).join(" y ")}`,
};
