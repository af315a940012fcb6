import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Courses, strips and rolls of a sheet barrier laid level, each course lapped over the one below. Rolls are counted by the
 * strips that can be cut from them, not by area; where the wall is longer than a roll, a course is pieced with end laps.
 * For sheets hung upright, give the height as the length.
 *
 * @example
 * ```ts
 * const paper = sheetLaps({ wallLength: "60 ft", wallHeight: "9 ft", sheetWidth: "36 in", rollLength: "150 ft", sideLap: "6 in", endLap: "6 in" });
 * paper.courses.toString(); // "4"
 * paper.rolls.toString(); // "2"
 * ```
 */
export const sheetLaps = /* @__PURE__ */ calculation({
  id: "membrane.sheet-laps",
  title: "Sheets of a barrier with their laps",
  given: {
    wallLength: { is: "length", unit: ["ft", "m"], symbol: "L", says: "length of the wall along the courses", above: 0 },
    wallHeight: { is: "length", unit: ["ft", "m"], symbol: "H", says: "height of the wall across the courses", above: 0 },
    sheetWidth: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the sheet", above: 0 },
    rollLength: { is: "length", unit: ["ft", "m"], symbol: "R", says: "length of sheet on a roll", above: 0 },
    sideLap: { is: "length", unit: ["in", "mm"], symbol: "l_s", says: "lap of a course over the one below", atLeast: 0 },
    endLap: { is: "length", unit: ["in", "mm"], symbol: "l_e", says: "lap of a piece over the next in its course", atLeast: 0 },
  },
  steps: {
    courseCover: { is: "length", unit: ["in", "mm"], symbol: "c_s", says: "height that each further course adds", formula: "sheetWidth - sideLap", basis: geometry, above: 0 },
    countedHeight: { is: "length", unit: ["ft", "m"], symbol: "H_c", says: "height that is counted, a course at the least", formula: "max(wallHeight, sheetWidth)", basis: geometry },
    courses: { is: "count", symbol: "n_c", says: "courses, the last one cut", formula: "ceil((countedHeight - sideLap) / courseCover)", basis: geometry },
    pieceCover: { is: "length", unit: ["ft", "m"], symbol: "c_e", says: "length that each further piece adds to a course", formula: "rollLength - endLap", basis: geometry, above: 0 },
    countedLength: { is: "length", unit: ["ft", "m"], symbol: "L_c", says: "length that is counted, a roll at the least", formula: "max(wallLength, rollLength)", basis: geometry },
    piecesPerCourse: { is: "count", symbol: "n_p", says: "pieces in a course", formula: "ceil((countedLength - endLap) / pieceCover)", basis: geometry },
    strips: { is: "count", symbol: "n", says: "pieces in all courses", formula: "courses * piecesPerCourse", basis: arithmetic },
    endLaps: { is: "count", symbol: "n_e", says: "end laps in all courses", formula: "courses * (piecesPerCourse - 1)", basis: arithmetic },
    lastPiece: { is: "length", unit: ["ft", "m"], symbol: "l_p", says: "last piece of a course; the others are whole rolls", formula: "wallLength - (piecesPerCourse - 1) * pieceCover", basis: geometry, above: 0 },
    lastPiecesPerRoll: { is: "count", symbol: "n_r", says: "last pieces that one roll gives", formula: "floor(rollLength / lastPiece)", basis: geometry, atLeast: 1 },
    rolls: { is: "count", symbol: "N", says: "whole rolls to order", formula: "courses * (piecesPerCourse - 1) + ceil(courses / lastPiecesPerRoll)", basis: arithmetic },
  },
  cautions: ["Openings are not taken off: their sheet is cut out of the courses. Laps, flashings and tapes at openings come besides."],
});
