import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * How far a stud stands from where it is drawn, and what its flange leaves of bearing for a board edge that is to meet on its
 * centre.
 *
 * @example
 * ```ts
 * const stud = studMark({ start: "16 in", spacing: "16 in", number: 6, measured: "96-3/8 in", flange: "1-5/8 in" });
 * stud.drawn.toString(); // "96 in"
 * stud.error.toString(); // "0.375 in"
 * stud.leastBearing.toString(); // "0.4375 in"
 * ```
 */
export const studMark = /* @__PURE__ */ calculation({
  id: "boards.stud-mark",
  title: "Stud against its drawn place",
  given: {
    start: { is: "length", unit: ["in", "mm"], symbol: "x_1", says: "from the end of the wall to the first stud as drawn", atLeast: 0 },
    spacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs as drawn, centre to centre", above: 0 },
    number: { is: "count", symbol: "i", says: "which stud it is, the first being 1", atLeast: 1, whole: true },
    measured: { is: "length", unit: ["in", "mm"], symbol: "x", says: "from the same end of the wall to the middle of the stud, the tape not lifted", atLeast: 0 },
    flange: { is: "length", unit: ["in", "mm"], symbol: "b", says: "width of the stud's face", above: 0 },
  },
  steps: {
    drawn: { is: "length", unit: ["in", "mm"], symbol: "x_d", says: "where it is drawn", formula: "start + (number - 1) * spacing", basis: geometry },
    error: { is: "length", unit: ["in", "mm"], symbol: "e", says: "how far beyond that it stands; below nought where it falls short", formula: "measured - drawn", basis: geometry },
    short: { is: "length", unit: ["in", "mm"], symbol: "e_s", says: "how far short; below nought where it is beyond", formula: "drawn - measured", basis: geometry },
    away: { is: "length", unit: ["in", "mm"], symbol: "e_a", says: "how far off either way", formula: "max(error, short)", basis: geometry },
    leastBearing: { is: "length", unit: ["in", "mm"], symbol: "b_l", says: "steel under the edge of the board that has less of it, for boards laid to the drawing; below nought the edge misses the stud", formula: "flange / 2 - away", basis: geometry },
  },
  cautions: ["Two boards that meet on a stud need the edge distance of their screws each: compare the least bearing with it, and begin the boards from the stud where it is too little."],
});
