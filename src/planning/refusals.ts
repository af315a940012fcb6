import type { Quantity } from "../core/quantity.js";
import { text, wordsFrom } from "../core/refusals.js";

/** Why the functions for planning refuse, in English. */
export const planningRefusals = {
  notBeforeFirstWater: ({ time }: { time: string }) => text`it must not come before the first water, ${time}`,
  aboveTheOther: ({ other }: { other: Quantity }) => text`above ${other}`,
  nameTheBatch: () => "write the name or number on the batch",
  placeOfUnit: ({ elevation, across, up }: { elevation: string; across: Quantity; up: Quantity }) => text`${elevation}, ${across} across, ${up} up`,
  noBatchThere: ({ elevations }: { elevations: readonly string[] }) => text`no batch is written down there; there are places on ${elevations}`,
  mostOfCrew: ({ crew }: { crew: Quantity }) => text`at most the crew, ${crew}`,
  stopsForWeather: ({ stage }: { stage: string }) => text`${stage} stops for weather; give its record and the rule`,
  ends: ({ time }: { time: string }) => text`it ends ${time}`,
  windowNotKnown: ({ stage, time }: { stage: string; time: string }) => text`${stage} begins ${time}, and whether its window is open then is not known; give a longer record`,
  notTheBeginning: ({ from }: { from: string }) => text`it must not be the beginning, ${from}`,
  nameWorkdays: () => "name the days of the week on which the crew works",
  labourLeft: ({ left, labour }: { left: Quantity; labour: Quantity }) => text`${left} of ${labour} are left`,
  doesNotEnd: ({ stage }: { stage: string }) => text`${stage} does not come to its end within 400 days of the beginning; look at crew, weather and frost`,
  fromTo: ({ from, until }: { from: string; until: string }) => text`from ${from} to ${until}`,
  weatherNotKnown: ({ stage, time }: { stage: string; time: string }) => text`${stage} is at work at ${time}, where nothing is known of the weather`,
  wallNotKnown: ({ stage, time }: { stage: string; time: string }) => text`${stage} is at work at ${time}, where nothing is known of the wall`,
  wallNotKnownAt: ({ time }: { time: string }) => text`nothing is known of the wall at ${time}`,
  waitsForStageBefore: () => "it waits for a stage before it; name one that has been listed before, or leave the hold out",
  wallEndsBefore: ({ stage }: { stage: string }) => text`the record of the wall ends before ${stage} may begin; give a longer one`,
};

/** Words a refusal of this room. */
export const say = /* @__PURE__ */ wordsFrom("planning", planningRefusals);
