import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

/** Words why the functions for weather refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("weather", {
  mostUnderLeast: ({ least }: { least: Quantity }) => sentence`above the least, ${least}`,
  ends: ({ time }: { time: string }) => sentence`it ends ${time}`,
  mustReachBeyond: ({ time, start }: { time: Quantity; start: string }) => sentence`it must reach ${time} beyond ${start}, until the film is dry`,
  withinForecast: ({ from, until }: { from: string; until: string }) => sentence`it must lie within the forecast, from ${from} to before ${until}`,
  shiftOverMidnight: ({ from }: { from: string }) => sentence`it must come after ${from}; a shift over midnight is not read`,
  noShiftCovered: () => "no shift is covered in full",
  coverAShift: () => "give a record that covers a shift from its beginning to its end",
  daysInOrder: () => "days come in their order, each once",
  highUnderLow: ({ low }: { low: Quantity }) => sentence`it must be at least the low, ${low}`,
  noStopInRule: () => 'TMS 602 has no temperature at which work stops; write that of the crew, such as "25 degF"',
  ruleStopsItself: () => "this rule says itself when work stops; leave it out",
  turnsOnTheWind: ({ temperature }: { temperature: Quantity }) => sentence`at ${temperature} the rule turns on the wind; write it, such as "6 mph"`,
  heatBelowStop: ({ stopBelow }: { stopBelow: Quantity }) => sentence`at least the temperature at which work stops, ${stopBelow}`,
});
