import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const planning: SamplesOf<"planning"> = {
  notBeforeFirstWater: { time: "2026-06-01T07:30-05:00" },
  aboveTheOther: { other: quantity("length", "4 ft") },
  placeOfUnit: { elevation: "north", across: quantity("length", "4 ft"), up: quantity("length", "6 ft") },
  noBatchThere: { elevations: ["north", "south"] },
  mostOfCrew: { crew: quantity("count", 3) },
  stopsForWeather: { stage: "setting" },
  ends: { time: "2026-10-05T18:00-05:00" },
  windowNotKnown: { stage: "setting", time: "2026-10-05T18:00-05:00" },
  notTheBeginning: { from: "07:00" },
  labourLeft: { left: quantity("time", "20 h"), labour: quantity("time", "60 h") },
  doesNotEnd: { stage: "setting" },
  fromTo: { from: "2026-10-05T12:00-05:00", until: "2026-10-06T12:00-05:00" },
  weatherNotKnown: { stage: "setting", time: "2026-10-05T18:00-05:00" },
  wallNotKnown: { stage: "setting", time: "2026-10-05T18:00-05:00" },
  wallNotKnownAt: { time: "2026-10-05T18:00-05:00" },
  wallEndsBefore: { stage: "setting" },
};
