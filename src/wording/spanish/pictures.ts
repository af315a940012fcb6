import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";
import { dimensions } from "./words.js";

const runsIn = { upright: "vertical", level: "horizontal" };
const plainKinds = { string: "un texto", number: "un número", boolean: "true o false" };

/** Why pictures are refused, in Spanish. */
export const pictures: RefusalTexts["pictures"] = {
  timeWanted: () => "se quiere una hora con su distancia a UTC, como la traen las respuestas",
  layoutHasNoScrews: () => "el trazo no los tiene; trace los tableros con tornillos, o no los pida aquí",
  checkHasSpots: ({ count }) => sentence`la revisión tiene ${count}; dé las lecturas de las que se hizo`,
  meanIsOther: ({ spot, mean }) => sentence`estas lecturas no tienen el promedio de ${spot} en la revisión, ${mean}; dé las lecturas de las que se hizo`,
  meanIsNone: ({ spot }) => sentence`estas lecturas no tienen el promedio de ${spot} en la revisión, que no tiene ninguno; dé las lecturas de las que se hizo`,
  otherWall: ({ width, height, wallWidth, wallHeight }) => sentence`se trazó en una pared de ${width} de ancho y ${height} de altura, y esta es de ${wallWidth} por ${wallHeight}`,
  jointMeetsUngiven: ({ runs, place }) => sentence`la junta de movimiento ${runsIn[runs]} en ${place} toca un vano que no se da aquí`,
  jointWithoutOpening: ({ runs, place }) => sentence`la junta de movimiento ${runsIn[runs]} en ${place} se trazó sin el vano que aquí toca`,
  jointIsShorter: ({ runs, place, length }) => sentence`la junta ${runsIn[runs]} en ${place} mide ${length}, y ningún vano dado aquí la acorta; dé los vanos del trazo, y una pared con cuatro esquinas a escuadra`,
  quantityWanted: ({ dimension }) => sentence`debe ser una cantidad con su unidad (${dimensions[dimension]}), como la traen las respuestas; lo que viene de JSON ya no lo es`,
  dimensionWanted: ({ dimension }) => sentence`se quiere ${dimensions[dimension]}`,
  kindWanted: ({ kind }) => sentence`se quiere ${plainKinds[kind]}`,
  listWanted: () => "se quiere una lista",
  inTheList: ({ count }) => sentence`${count} en la lista`,
  giveOrMore: ({ least }) => sentence`dé ${least} o más`,
  objectWanted: () => "se quiere un objeto",
  giveAnswersOf: ({ of }) => sentence`dé las respuestas de ${of} tal como salieron`,
  giveIntervals: () => "dé los intervalos de un registro por el reloj",
  noLayerOfThatName: ({ layers }) => sentence`ninguna de sus capas tiene el nombre de una de aquí; el corte tiene ${layers}`,
  layerThickerThanNought: () => "una capa es más gruesa que cero",
  studsFurtherApart: ({ width }) => sentence`montantes de ${width} de ancho van más separados que eso`,
  hoursInOrder: () => "las horas van en orden de tiempo, cada una una vez",
  tooManyUnits: ({ most }) => sentence`más de ${most} no se distinguen en una hoja; dibuje una parte de la pared`,
  panelBeyondWall: () => "sus hiladas o su aparejo se salen de la pared; dé al paño su propia altura y longitud, y su lugar",
};
