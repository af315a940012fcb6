import type { Quantity } from "../core/quantity.js";
import { text, wordsFrom } from "../core/refusals.js";

/** Why the functions for weather refuse, in English. */
export const weatherRefusals = {
  mostUnderLeast: ({ least }: { least: Quantity }) => text`above the least, ${least}`,
  ends: ({ time }: { time: string }) => text`it ends ${time}`,
  mustReachBeyond: ({ time, start }: { time: Quantity; start: string }) => text`it must reach ${time} beyond ${start}, until the film is dry`,
  withinForecast: ({ from, until }: { from: string; until: string }) => text`it must lie within the forecast, from ${from} to before ${until}`,
  shiftOverMidnight: ({ from }: { from: string }) => text`it must come after ${from}; a shift over midnight is not read`,
  noShiftCovered: () => "no shift is covered in full",
  coverAShift: () => "give a record that covers a shift from its beginning to its end",
  daysInOrder: () => "days come in their order, each once",
  highUnderLow: ({ low }: { low: Quantity }) => text`it must be at least the low, ${low}`,
  noStopInRule: () => 'TMS 602 has no temperature at which work stops; write that of the crew, such as "25 degF"',
  ruleStopsItself: () => "this rule says itself when work stops; leave it out",
  turnsOnTheWind: ({ temperature }: { temperature: Quantity }) => text`at ${temperature} the rule turns on the wind; write it, such as "6 mph"`,
  heatBelowStop: ({ stopBelow }: { stopBelow: Quantity }) => text`at least the temperature at which work stops, ${stopBelow}`,
};

/** Words a refusal of this topic. */
export const say = /* @__PURE__ */ wordsFrom("weather", weatherRefusals);
