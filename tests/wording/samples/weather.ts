import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const weather: SamplesOf<"weather"> = {
  mostUnderLeast: { least: quantity("temperature", "40 degF") },
  ends: { time: "2026-10-05T18:00-05:00" },
  mustReachBeyond: { time: quantity("time", "6 h"), start: "2026-10-05T12:00-05:00" },
  withinForecast: { from: "2026-10-05T12:00-05:00", until: "2026-10-06T12:00-05:00" },
  shiftOverMidnight: { from: "07:00" },
  highUnderLow: { low: quantity("temperature", "20 degF") },
  turnsOnTheWind: { temperature: quantity("temperature", "95 degF") },
  heatBelowStop: { stopBelow: quantity("temperature", "25 degF") },
};
