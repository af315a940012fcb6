import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

/** Why the functions for films refuse, in Spanish. */
export const film: RefusalTexts["film"] = {
  mostUnderLeast: ({ least }) => sentence`al menos la película mínima, ${least}`,
  firstDryUnderLastWet: ({ lastWetTooth }) => sentence`mayor que el último diente mojado, ${lastWetTooth}`,
  ruleForDryFilm: () => 'tolera faltas de una película seca y no es regla para una húmeda; escriba rule: "band", con el mínimo y el máximo de una mano',
  teethReadWetFilm: () => "un medidor de dientes mide una película húmeda, no una seca",
  giveReadingsOrTeeth: () => "dé lecturas (readings) o dientes (teeth)",
  giveReadings: () => "dé lecturas (readings)",
  ownRuleNeeds: ({ names }) => sentence`una regla propia necesita ${names.join(" y ")}`,
  ruleHasItsOwn: ({ rule }) => sentence`${rule} trae el suyo; escriba rule: "own" para el de usted`,
  ruleOnFileWithoutMost: ({ rule }) => sentence`${rule} está aquí sin máximo; no lo escriba y revise el máximo con una banda propia (band)`,
  ruleHasNoMost: ({ rule }) => sentence`${rule} no tiene máximo; no lo escriba`,
  spotsJudgedTogether: ({ rule, spots }) => sentence`${rule} juzga juntos ${spots} puntos de un área de 100 ft2; revise cada área por separado`,
  spotIsMeanOf: ({ least }) => sentence`un punto es el promedio de ${least} o más`,
  solidsWithDryFilm: () => "va con dryFilm; una película húmeda se aplica como está",
  dryFilmNeedsSolids: () => "una película seca lo necesita; escriba un porcentaje de la ficha técnica",
};
