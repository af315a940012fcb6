import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

const levels = { strength: "de resistencia", allowable: "admisible" };

/** Why the functions for fasteners refuse, in Spanish. */
export const fasteners: RefusalTexts["fasteners"] = {
  endsPastStud: ({ width, past }) => sentence`un tablero de ${width} de ancho termina ${past} más allá de un montante`,
  backTheEdges: () => "una línea de tornillos en ese borde no daría en acero; ponga respaldo en los bordes (edgesBacked: true)",
  backTheEdgesOrCut: ({ cutTo }) => sentence`una línea de tornillos en ese borde no daría en acero; ponga respaldo en los bordes (edgesBacked: true) o corte el tablero a ${cutTo}, un número entero de separaciones de montantes`,
  strengthLevelBy: ({ edition }) => sentence`nivel de resistencia por ${edition}`,
  onlyAllowableLevel: () => "sus presiones están a nivel admisible (allowable), y aquí no hay paso al de resistencia; pida el nivel admisible",
  giveSteel: () => "dé el acero por sus mils, o su espesor de diseño",
  boardUnderHead: () => "un tablero bajo la cabeza",
  steelOnSteel: () => "las ecuaciones valen para acero sobre acero; lo que aguanta un tablero bajo la cabeza de un tornillo es un valor de ensayo, así que pídalo al fabricante",
  pressureAtStrength: () => "una presión a nivel de resistencia",
  screwsAtAllowable: () => 'las cargas de los tornillos están a nivel admisible; dé la presión a ese nivel (claddingPressure con level: "allowable")',
  speedAtLevel: ({ level }) => sentence`una velocidad a nivel ${levels[level]}`,
  mapsGiveLevel: ({ edition, level }) => sentence`los mapas de ${edition} dan velocidades a nivel ${levels[level]}; tome la velocidad del mapa de la edición nombrada`,
  noSuchFactor: ({ edition }) => sentence`${edition} no tiene este factor; no lo escriba`,
  hasThisFactor: ({ edition }) => sentence`${edition} tiene este factor; escriba un número`,
};
