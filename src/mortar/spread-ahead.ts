import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * How far mortar may be spread ahead of the units: what the setters cover while it is open, and no more than the run the
 * job allows.
 *
 * @example
 * ```ts
 * const ahead = spreadAhead({ openTime: "20 min", openShare: "50 %", placingRate: "24 ft2/h", height: "2 ft", longestRun: "4 ft" });
 * ahead.open.toString(); // "10 min"
 * ahead.run.toString(); // "2 ft"
 * ahead.area.toString(); // "4 ft2"
 * ```
 */
export const spreadAhead = /* @__PURE__ */ calculation({
  id: "mortar.spread-ahead",
  title: "Mortar to spread ahead of the units",
  given: {
    openTime: { is: "time", unit: "min", symbol: "T_o", says: "open time of the mortar from its data sheet", above: 0 },
    openShare: { is: "ratio", unit: "%", symbol: "f", says: "share of the open time that sun, wind and a thirsty wall leave, found by touch; 100 % in still shade", above: 0, atMost: 1 },
    placingRate: { is: "areaPerTime", unit: ["ft2/h", "m2/h"], symbol: "R", says: "face set in an hour by those who set on this bed", above: 0 },
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of the band that is spread", above: 0 },
    longestRun: { is: "length", unit: ["ft", "m"], symbol: "l_x", says: "longest run the job allows", above: 0 },
  },
  steps: {
    open: { is: "time", unit: "min", symbol: "T", says: "time it stays open here", formula: "openTime * openShare", basis: arithmetic },
    covered: { is: "area", unit: ["ft2", "m2"], symbol: "A_c", says: "face set in this time", formula: "placingRate * open", basis: arithmetic },
    byOpenTime: { is: "length", unit: ["ft", "m"], symbol: "l_o", says: "run that is set in this time", formula: "covered / height", basis: geometry },
    run: { is: "length", unit: ["ft", "m"], symbol: "l", says: "run to spread", formula: "min(byOpenTime, longestRun)", basis: arithmetic },
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "face to spread", formula: "run * height", basis: geometry },
  },
  cautions: [
    "Test before the clock: mortar that leaves nothing on the finger is scraped off and not set on. A skin was seen 5 to 10 min after combing.",
    "In the heat, above 100 degF or above 90 degF in wind of more than 8 mph, mortar is spread no more than 4 ft ahead.",
    "The open time of a data sheet is that of a laboratory without wind or sun.",
  ],
});
