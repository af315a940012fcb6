// Marks of a story rod: each height rounded by itself, never the step.
import { describe, expect, it } from "vitest";
import { quantity } from "../../src/core/read-quantity.js";
import { rodCourses, rodMark } from "../../src/layout/story-rod.js";
import { storyRodText } from "../../src/layout/story-rod-text.js";
import { tapeMark } from "../../src/layout/tape-mark.js";
import { faults } from "../support/faults.js";

describe("tapeMark", () => {
  it("takes the nearest division, a half up", () => {
    const mark = (height: `${number}/${number} in`): string => tapeMark({ height, division: "1/16 in" }).mark.toJSON().value;
    // 8/3 in is 42.67 sixteenths; 1/32 in is half a sixteenth, 31/1000 a little less.
    expect([mark("8/3 in"), mark("1/32 in"), mark("31/1000 in")]).toEqual(["43/16", "1/16", "0"]);
    expect(tapeMark({ height: "66.5 mm", division: "1 mm" }).mark.toString()).toBe("67 mm");
    expect(faults(tapeMark.try({ height: "-1 in", division: "0 in" }))).toEqual(["tooLow height", "tooLow division"]);
  });
});

describe("the marks of a rod", () => {
  const brick = Array.from({ length: 100 }, () => ({ unitHeight: quantity("length", "2-1/4 in"), cut: false }));
  const joint = quantity("length", "5/12 in");

  it("come to 22 ft 2-11/16 in after 100 courses, not to 100 times 2-11/16 in, 22 ft 4-3/4 in", () => {
    const rod = rodCourses(brick, joint, true, "1/16 in");
    expect(rod[99]?.top.reads).toBe("22 ft 2-11/16 in");
    expect(rod[2]?.top.reads).toBe("8 in");
    expect(100 * (2 + 11 / 16)).toBe(22 * 12 + 4.75);
  });

  it("are never half a division off, and every third is a whole number of inches", () => {
    for (const [tape, half] of [["1/16 in", 1 / 32], ["1/32 in", 1 / 64], ["1 mm", 0.5 / 25.4]] as const) {
      for (const { course, top, foot } of rodCourses(brick, joint, true, tape)) {
        for (const { height, mark } of [top, foot]) expect(Math.abs(mark.toNumber("in") - height.toNumber("in"))).toBeLessThanOrEqual(half + 1e-12);
        if (course % 3 === 0) expect(top.height.to("in").toString()).toBe(String((course / 3) * 8));
      }
    }
  });

  it("begin with a joint where one lies below, and with the unit where not", () => {
    const below = rodCourses(brick.slice(0, 2), quantity("length", "1/2 in"), true, "1/16 in");
    expect(below.map(({ foot, top }) => [foot.reads, top.reads])).toEqual([["1/2 in", "2-3/4 in"], ["3-1/4 in", "5-1/2 in"]]);
    const onLedger = rodCourses(brick.slice(0, 2), quantity("length", "1/2 in"), false, "1/16 in");
    expect(onLedger.map(({ foot, top }) => [foot.reads, top.reads])).toEqual([["0 in", "2-1/4 in"], ["2-3/4 in", "5 in"]]);
  });

  it("read in millimetres on a metric tape", () => {
    const metric = rodCourses([{ unitHeight: quantity("length", "65 mm"), cut: false }, { unitHeight: quantity("length", "65 mm"), cut: false }], quantity("length", "10.4 mm"), true, "1 mm");
    // 10.4 + 65 = 75.4; twice that is 150.8, not twice 75.
    expect(metric.map(({ top }) => top.reads)).toEqual(["75 mm", "151 mm"]);
    expect(rodMark(quantity("length", "1 in"), "1/32 in").reads).toBe("1 in");
    expect(rodMark(quantity("length", "19/32 in"), "1/32 in").reads).toBe("19/32 in");
  });
});

describe("storyRodText", () => {
  it("lists each course with its foot and top, the top course first, and says which are cut", () => {
    // 26 in: two of 4-5/8 in, cut, two of 7-5/8 in, joints of 3/8 in over each.
    const sizes = [["4-5/8 in", true], ["7-5/8 in", false], ["7-5/8 in", false], ["4-5/8 in", true]] as const;
    const rod = rodCourses(sizes.map(([height, cut]) => ({ unitHeight: quantity("length", height), cut })), quantity("length", "3/8 in"), false, "1/16 in");
    const lines = storyRodText(rod).split("\n");
    expect(lines.map((line) => line.trim().split(/ {2,}/))).toEqual([
      ["course", "foot", "top"],
      ["4", "1 ft 9 in", "2 ft 1-5/8 in", "cut"],
      ["3", "1 ft 1 in", "1 ft 8-5/8 in"],
      ["2", "5 in", "1 ft 0-5/8 in"],
      ["1", "0 in", "4-5/8 in", "cut"],
    ]);
    // In columns that end together.
    expect(new Set(lines.map((line) => line.replace(/ {2}cut$/, "").length)).size).toBe(1);
  });
});
