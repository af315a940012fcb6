import type { Quantity } from "../core/quantity.js";
import { compare, sum, times } from "../core/quantity-arithmetic.js";
import { apart, sizeAt } from "./close-run.js";

type Length = Quantity<"length">;

/** The course lines over a base line: line 0 is the base line, each next one a unit and a joint higher. */
export interface CourseLines {
  readonly at: (line: number) => Length;
  /** The face height of the units between a line and the next. */
  readonly unitOver: (line: number) => Length;
  /** The line nearest to a height, from a line on; the lower of two equally near. */
  readonly nearest: (height: Length, from: number) => number;
}

/** Course lines for units of these heights, begun again at the end of the list. */
export function courseLines(unitHeights: readonly Length[], bedJoint: Length): CourseLines {
  const lines: Length[] = [times(bedJoint, 0)];
  const at = (line: number): Length => {
    while (lines.length <= line) lines.push(sum([sizeAt(unitHeights, lines.length - 1), lines.at(-1) as Length, bedJoint]));
    return lines[line] as Length;
  };
  const nearest = (height: Length, from: number): number => {
    let line = from;
    while (compare(apart(height, at(line + 1)), apart(height, at(line))) < 0) line += 1;
    return line;
  };
  return { at, unitOver: (line) => sizeAt(unitHeights, line), nearest };
}
