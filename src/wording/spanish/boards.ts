import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

const laidOut = { boards: "tableros", openings: "vanos", studs: "montantes" };

/** Why the functions for boards refuse, in Spanish. */
export const boards: RefusalTexts["boards"] = {
  layersFromOneTo: ({ most }) => sentence`dé de 1 a ${most} capas`,
  lengthsFromOneTo: ({ most }) => sentence`dé de 1 a ${most} longitudes`,
  stockFromOneTo: ({ most }) => sentence`dé de 1 a ${most} longitudes que se puedan comprar`,
  giveWhole: () => "dé un número entero",
  longerThanStock: () => "es más largo que toda longitud en venta; hay que empalmarlo de pedazos",
  mostCut: ({ most }) => sentence`se cortan a lo más ${most} a la vez`,
  mostLaidOut: ({ most, of }) => sentence`se trazan a lo más ${most} ${laidOut[of]} a la vez; revise las medidas, o trace una parte de la pared`,
  widthIsShortSide: ({ length }) => sentence`width es el lado corto del tablero, y su longitud es ${length}; cómo se coloca lo dice orientation`,
  shiftLongerThanBoard: () => "el desfase de una hilada a la siguiente no puede ser mayor que el tablero",
  firstStudTooFar: () => "el primer montante no puede estar más lejos del extremo de la pared que la separación",
  firstBoardTooFarAcross: () => "el primer tablero entero no puede comenzar a más de un tablero del extremo de la pared",
  firstBoardTooFarUp: () => "el primer tablero entero no puede comenzar a más de un tablero del pie de la pared",
  widthByLength: ({ width, length }) => sentence`${width} por ${length}`,
  boardLargerThanWall: () => "el tablero es mayor que la pared en los dos sentidos; dé la pared completa, o el tablero ya cortado",
  aboutBoards: ({ count }) => sentence`unos ${count} tableros`,
  openingBeyondWall: () => "el vano se sale de la pared",
  openingOverlaps: ({ other }) => sentence`el vano se encima con openings[${other}]`,
  noWallLeft: () => "los vanos no dejan pared que cubrir con tableros",
};
