import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

/** Words why the functions for films refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("film", {
  mostUnderLeast: ({ least }: { least: Quantity }) => sentence`at least the least film, ${least}`,
  firstDryUnderLastWet: ({ lastWetTooth }: { lastWetTooth: Quantity }) => sentence`above the last tooth that is wet, ${lastWetTooth}`,
  ruleForDryFilm: () => 'it allows for a dry film and is no rule for a wet one; write rule: "band", with the least and most of one coat',
  teethReadWetFilm: () => "a gauge with teeth reads a wet film, not a dry one",
  giveReadingsOrTeeth: () => "give readings or teeth",
  giveReadings: () => "give readings",
  ownRuleNeeds: ({ names }: { names: readonly string[] }) => sentence`a rule of your own needs ${names.join(" and ")}`,
  ruleHasItsOwn: ({ rule }: { rule: string }) => sentence`${rule} has its own; write rule: "own" for yours`,
  ruleOnFileWithoutMost: ({ rule }: { rule: string }) => sentence`${rule} is on file here without a most; leave it out and check the most by a band of your own`,
  ruleHasNoMost: ({ rule }: { rule: string }) => sentence`${rule} has no most; leave it out`,
  spotsJudgedTogether: ({ rule, spots }: { rule: string; spots: number }) => sentence`${rule} judges ${spots} spots of an area of 100 ft2 together; check each area by itself`,
  spotIsMeanOf: ({ least }: { least: number }) => sentence`a spot is the mean of ${least} or more`,
  solidsWithDryFilm: () => "it goes with dryFilm; a wet film is spread as it is",
  dryFilmNeedsSolids: () => "a dry film needs it; write a percentage from the data sheet",
});
