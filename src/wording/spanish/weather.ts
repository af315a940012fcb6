import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

/** Why the functions for weather refuse, in Spanish. */
export const weather: RefusalTexts["weather"] = {
  mostUnderLeast: ({ least }) => sentence`mayor que la mínima, ${least}`,
  ends: ({ time }) => sentence`termina ${time}`,
  mustReachBeyond: ({ time, start }) => sentence`debe alcanzar ${time} más allá de ${start}, hasta que la película esté seca`,
  withinForecast: ({ from, until }) => sentence`debe quedar dentro del pronóstico, de ${from} a antes de ${until}`,
  shiftOverMidnight: ({ from }) => sentence`debe ser después de ${from}; un turno que pasa de medianoche no se lee`,
  noShiftCovered: () => "ningún turno queda cubierto por completo",
  coverAShift: () => "dé un registro que cubra un turno de su comienzo a su fin",
  daysInOrder: () => "los días van en orden, cada uno una vez",
  highUnderLow: ({ low }) => sentence`debe ser al menos la mínima, ${low}`,
  noStopInRule: () => 'TMS 602 no trae temperatura a la que se suspende el trabajo; escriba la de la cuadrilla, como "25 degF"',
  ruleStopsItself: () => "esta regla misma dice cuándo se suspende el trabajo; no lo escriba",
  turnsOnTheWind: ({ temperature }) => sentence`a ${temperature} la regla depende del viento; escríbalo, como "6 mph"`,
  heatBelowStop: ({ stopBelow }) => sentence`al menos la temperatura a la que se suspende el trabajo, ${stopBelow}`,
};
