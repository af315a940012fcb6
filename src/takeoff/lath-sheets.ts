import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Sheets of lath by what each covers between its laps.
 *
 * @example
 * ```ts
 * const lath = lathSheets({ area: "400 ft2", sheetWidth: "27 in", sheetLength: "8 ft", sideLap: "1 in", endLap: "2 in", waste: "5 %" });
 * lath.cover.toString(); // "16.97222222 ft2"
 * lath.toOrder.toString(); // "25"
 * ```
 */
export const lathSheets = /* @__PURE__ */ calculation({
  id: "takeoff.lath-sheets",
  title: "Sheets of lath",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area to be lathed, openings out and returns in", above: 0 },
    sheetWidth: { is: "length", unit: ["in", "mm"], symbol: "W", says: "width of a sheet", above: 0 },
    sheetLength: { is: "length", unit: ["ft", "m"], symbol: "L", says: "length of a sheet", above: 0 },
    sideLap: { is: "length", unit: ["in", "mm"], symbol: "l_s", says: "lap at the sides", atLeast: 0 },
    endLap: { is: "length", unit: ["in", "mm"], symbol: "l_e", says: "lap at the ends", atLeast: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "cut off and thrown away, on top of the net", atLeast: 0, below: 1 },
  },
  steps: {
    widthBetweenLaps: { is: "length", unit: ["in", "mm"], symbol: "W_n", says: "width less the lap", formula: "sheetWidth - sideLap", basis: geometry, above: 0 },
    lengthBetweenLaps: { is: "length", unit: ["ft", "m"], symbol: "L_n", says: "length less the lap", formula: "sheetLength - endLap", basis: geometry, above: 0 },
    cover: { is: "area", unit: ["ft2", "m2"], symbol: "A_n", says: "what one sheet covers", formula: "widthBetweenLaps * lengthBetweenLaps", basis: geometry },
    net: { is: "count", symbol: "n", says: "sheets on the wall, before rounding", formula: "area / cover", basis: arithmetic },
    withWaste: { is: "count", symbol: "n_w", says: "sheets with waste, before rounding", formula: "net * (1 + waste)", basis: arithmetic },
    toOrder: { is: "count", symbol: "n_o", says: "whole sheets to order", formula: "ceil(withWaste)", basis: arithmetic },
  },
  cautions: ["Which laps, which fasteners and which way up the lath goes is for its standard and the specification to say."],
});
