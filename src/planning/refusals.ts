import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

/** Words why the functions for planning refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("planning", {
  notBeforeFirstWater: ({ time }: { time: string }) => sentence`it must not come before the first water, ${time}`,
  aboveTheOther: ({ other }: { other: Quantity }) => sentence`above ${other}`,
  nameTheBatch: () => "write the name or number on the batch",
  placeOfUnit: ({ elevation, across, up }: { elevation: string; across: Quantity; up: Quantity }) => sentence`${elevation}, ${across} across, ${up} up`,
  noBatchThere: ({ elevations }: { elevations: readonly string[] }) => sentence`no batch is written down there; there are places on ${elevations}`,
  mostOfCrew: ({ crew }: { crew: Quantity }) => sentence`at most the crew, ${crew}`,
  stopsForWeather: ({ stage }: { stage: string }) => sentence`${stage} stops for weather; give its record and the rule`,
  ends: ({ time }: { time: string }) => sentence`it ends ${time}`,
  windowNotKnown: ({ stage, time }: { stage: string; time: string }) => sentence`${stage} begins ${time}, and whether its window is open then is not known; give a longer record`,
  notTheBeginning: ({ from }: { from: string }) => sentence`it must not be the beginning, ${from}`,
  nameWorkdays: () => "name the days of the week on which the crew works",
  labourLeft: ({ left, labour }: { left: Quantity; labour: Quantity }) => sentence`${left} of ${labour} are left`,
  doesNotEnd: ({ stage }: { stage: string }) => sentence`${stage} does not come to its end within 400 days of the beginning; look at crew, weather and frost`,
  fromTo: ({ from, until }: { from: string; until: string }) => sentence`from ${from} to ${until}`,
  weatherNotKnown: ({ stage, time }: { stage: string; time: string }) => sentence`${stage} is at work at ${time}, where nothing is known of the weather`,
  wallNotKnown: ({ stage, time }: { stage: string; time: string }) => sentence`${stage} is at work at ${time}, where nothing is known of the wall`,
  wallNotKnownAt: ({ time }: { time: string }) => sentence`nothing is known of the wall at ${time}`,
  waitsForStageBefore: () => "it waits for a stage before it; name one that has been listed before, or leave the hold out",
  wallEndsBefore: ({ stage }: { stage: string }) => sentence`the record of the wall ends before ${stage} may begin; give a longer one`,
});
