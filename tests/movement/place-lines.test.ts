import { describe, expect, it } from "vitest";
import { exact } from "../../src/core/amount.js";
import { type JointLine, placeLines } from "../../src/movement/place-lines.js";

type Why = JointLine["why"][number];

const places = (why: Why, ...at: readonly number[]): readonly JointLine[] => at.map((one) => ({ at: exact(BigInt(one)), why: [why] }));
const told = (lines: readonly JointLine[]): readonly string[] => lines.map(({ at, why }) => `${at.toString()}: ${why.join(", ")}`);
const run = { length: exact(40n), most: exact(24n), fixed: [], preferred: [] };

describe("placeLines", () => {
  it("halves a run that is longer than the spacing, and leaves one that is as long", () => {
    expect(told(placeLines(run))).toEqual(["20: spacing"]);
    expect(told(placeLines({ ...run, length: exact(24n) }))).toEqual([]);
    expect(told(placeLines({ ...run, length: exact(72n) }))).toEqual(["24: spacing", "48: spacing"]);
  });

  it("draws a line to the preferred place nearest to the even one, of those that cost no line more", () => {
    // From 40 - 24 = 16 to 24 a line does for both parts; 20 is even, 22 is nearer to it than 17.
    expect(told(placeLines({ ...run, preferred: places("jamb", 17, 22) }))).toEqual(["22: jamb, spacing"]);
    expect(told(placeLines({ ...run, preferred: places("jamb", 19, 23) }))).toEqual(["19: jamb, spacing"]);
    expect(told(placeLines({ ...run, preferred: places("jamb", 15, 25) }))).toEqual(["20: spacing"]);
    expect(told(placeLines({ ...run, preferred: places("jamb", 16) }))).toEqual(["16: jamb, spacing"]);
  });

  it("puts one near an outside corner, as far from it as the corner allows, at a preferred place where there is one", () => {
    const near = exact(6n);
    expect(told(placeLines({ ...run, most: exact(40n), nearStart: near }))).toEqual(["6: outside corner"]);
    expect(told(placeLines({ ...run, most: exact(40n), nearEnd: near }))).toEqual(["34: outside corner"]);
    expect(told(placeLines({ ...run, most: exact(40n), nearStart: near, preferred: places("jamb", 0, 2, 5) }))).toEqual(["5: jamb, outside corner"]);
    expect(told(placeLines({ ...run, most: exact(40n), nearEnd: near, preferred: places("jamb", 35, 38, 40) }))).toEqual(["35: jamb, outside corner"]);
    // A joint that stands there anyway is near enough.
    expect(told(placeLines({ ...run, most: exact(40n), nearStart: near, fixed: places("backing joint", 4) }))).toEqual(["4: backing joint"]);
  });

  it("keeps every fixed line, once, with all its reasons", () => {
    const fixed = [...places("backing joint", 30, 10, 20), ...places("floor line", 20)];
    expect(told(placeLines({ ...run, fixed }))).toEqual(["10: backing joint", "20: backing joint, floor line", "30: backing joint"]);
  });
});
