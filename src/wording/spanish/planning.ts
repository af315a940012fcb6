import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

/** Why the functions for planning refuse, in Spanish. */
export const planning: RefusalTexts["planning"] = {
  notBeforeFirstWater: ({ time }) => sentence`no debe ser antes de la primera agua, ${time}`,
  aboveTheOther: ({ other }) => sentence`mayor que ${other}`,
  nameTheBatch: () => "escriba el nombre o número de la tanda",
  placeOfUnit: ({ elevation, across, up }) => sentence`${elevation}, ${across} a lo ancho, ${up} a lo alto`,
  noBatchThere: ({ elevations }) => sentence`allí no hay ninguna tanda anotada; hay lugares en ${elevations}`,
  mostOfCrew: ({ crew }) => sentence`a lo más la cuadrilla, ${crew}`,
  stopsForWeather: ({ stage }) => sentence`${stage} se suspende por el clima; dé su registro y la regla`,
  ends: ({ time }) => sentence`termina ${time}`,
  windowNotKnown: ({ stage, time }) => sentence`${stage} comienza ${time}, y no se sabe si su ventana está abierta entonces; dé un registro más largo`,
  notTheBeginning: ({ from }) => sentence`no debe ser el comienzo, ${from}`,
  nameWorkdays: () => "nombre los días de la semana en que trabaja la cuadrilla",
  labourLeft: ({ left, labour }) => sentence`quedan ${left} de ${labour}`,
  doesNotEnd: ({ stage }) => sentence`${stage} no llega a su fin en los 400 días desde el comienzo; revise cuadrilla, clima y helada`,
  fromTo: ({ from, until }) => sentence`de ${from} a ${until}`,
  weatherNotKnown: ({ stage, time }) => sentence`${stage} está en obra a ${time}, cuando no se sabe nada del clima`,
  wallNotKnown: ({ stage, time }) => sentence`${stage} está en obra a ${time}, cuando no se sabe nada de la pared`,
  wallNotKnownAt: ({ time }) => sentence`no se sabe nada de la pared a ${time}`,
  waitsForStageBefore: () => "espera a una etapa anterior; nombre una que esté antes en la lista, o deje fuera la espera (hold)",
  wallEndsBefore: ({ stage }) => sentence`el registro de la pared termina antes de que ${stage} pueda comenzar; dé uno más largo`,
};
