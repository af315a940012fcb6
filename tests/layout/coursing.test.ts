import { describe, expect, it } from "vitest";
import { coursing } from "../../src/layout/coursing.js";
import { faults } from "../support/faults.js";
import { drawFrom } from "../support/random.js";

const bedJoint = { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" } as const;
const eight = { unitHeights: ["7-5/8 in"], bedJoint, tape: "1/16 in" } as const;
const onLedger = { ...eight, datum: "bed to bed", bedJointLies: "over the unit" } as const;

/** `4 courses, 0 cut, 3/8`: the joint in inches, exact. */
const told = ({ courses, cutCourses, bedJoint }: ReturnType<typeof coursing>): string => `${courses.toString()} courses, ${cutCourses.toString()} cut, ${bedJoint.toJSON().value}`;

describe("coursing: the joint that closes", () => {
  it("bed to bed j = H / n - u, unit to unit (H - n u) / (n - 1), opening (H - n u) / (n + 1)", () => {
    // 81 in by ten of 7-5/8 in: 4-3/4 in of joints over 10, 9 and 11. The second is 19/36 in, more than 1/2 in, and eleven
    // are too many (81 - 83-7/8): so a wider range.
    expect(told(coursing({ ...onLedger, height: "81 in" }))).toBe("10 courses, 0 cut, 19/40");
    expect(told(coursing({ ...eight, bedJoint: { ...bedJoint, most: "5/8 in" }, datum: "unit to unit", height: "81 in" }))).toBe("10 courses, 0 cut, 19/36");
    expect(told(coursing({ ...eight, datum: "opening", height: "81 in" }))).toBe("10 courses, 0 cut, 19/44");
  });

  it("tells how far each joint is from the one wanted", () => {
    // 19/40 - 15/40.
    expect(coursing({ ...onLedger, height: "81 in" }).perJoint.toString()).toBe("0.1 in");
    expect(coursing({ ...onLedger, height: "79-1/2 in" }).perJoint.toString()).toBe("-0.05 in");
  });

  it("takes of the numbers below and above the one nearest to the joint wanted, and shows both", () => {
    // 100 in by 2-1/4 in: 38 give 0.3816, 39 give 0.3141, 37 give 0.4527.
    const brick = { ...onLedger, unitHeights: ["2-1/4 in"], height: "100 in" } as const;
    const both = coursing(brick);
    expect(both.closing.map(({ units, joint, within }) => [units, joint.to("in").toFixed(4), within])).toEqual([[38, "0.3816", true], [39, "0.3141", true]]);
    expect(both.courses.toString()).toBe("38");
    // Wanted 0.35 in: 38 are 0.0316 off, 39 are 0.0359; wanted 0.34 in: 0.0416 and 0.0259.
    expect(coursing({ ...brick, bedJoint: { ...bedJoint, wanted: "0.35 in" } }).courses.toString()).toBe("38");
    expect(coursing({ ...brick, bedJoint: { ...bedJoint, wanted: "0.34 in" } }).courses.toString()).toBe("39");
    // The nearer one is out of the range: the other is taken.
    expect(coursing({ ...brick, bedJoint: { least: "0.32 in", wanted: "0.34 in", most: "1/2 in" } }).courses.toString()).toBe("38");
  });

  it("of two equally near takes the fewer courses", () => {
    // 30 in by 2 in: 12 leave 1/2 in, 13 leave 4/13; wanted midway, 21/52.
    const tie = { ...onLedger, unitHeights: ["2 in"], height: "30 in", bedJoint: { least: "0 in", wanted: "21/52 in", most: "1 in" } } as const;
    expect(told(coursing(tie))).toBe("12 courses, 0 cut, 1/2");
  });

  it("courses of several heights, begun again at the end of the list", () => {
    // 7-5/8, 3-5/8, 7-5/8, 3-5/8, 7-5/8: 30-1/8 in; 32 in leave 1-7/8 in over five joints.
    const ashlar = coursing({ ...onLedger, unitHeights: ["7-5/8 in", "3-5/8 in"], height: "32 in" });
    expect(told(ashlar)).toBe("5 courses, 0 cut, 3/8");
    expect(ashlar.storyRod.map(({ foot }) => foot.reads)).toEqual(["0 in", "8 in", "1 ft", "1 ft 8 in", "2 ft"]);
  });

  it("reads a tape of 32nds as well", () => {
    // The second course stands at 7-5/8 + 19/40 in = 8.1 in: 3/32 on the one tape, 2/16 on the other.
    const foot = (tape: "1/16 in" | "1/32 in"): string | undefined => coursing({ ...onLedger, height: "81 in", tape }).storyRod[1]?.foot.reads;
    expect([foot("1/16 in"), foot("1/32 in")]).toEqual(["8-1/8 in", "8-3/32 in"]);
  });

  it("in millimetres", () => {
    const metric = coursing({ height: "2.7 m", unitHeights: ["65 mm"], bedJoint: { least: "8 mm", wanted: "10 mm", most: "12 mm" }, datum: "bed to bed", bedJointLies: "under the unit", tape: "1 mm" });
    expect([metric.courses.toString(), metric.bedJoint.toString(), metric.storyRod.at(-1)?.top.reads]).toEqual(["36", "10 mm", "2700 mm"]);
  });
});

describe("coursing in other units", () => {
  it("is the same wall in millimetres", () => {
    for (const inches of [26, 30, 80, 81, 100]) {
      const us = coursing({ ...onLedger, height: `${inches} in` });
      const metric = coursing({
        height: `${inches * 254}/10 mm`, unitHeights: ["193.675 mm"], bedJoint: { least: "6.35 mm", wanted: "9.525 mm", most: "12.7 mm" }, datum: "bed to bed", bedJointLies: "over the unit", tape: "1/16 in",
      });
      expect(metric.storyRod.map(({ top }) => top.reads)).toEqual(us.storyRod.map(({ top }) => top.reads));
      expect(metric.bedJoint.to("in").toString()).toBe(us.bedJoint.to("in").toString());
    }
  });
});

describe("coursing: the cut course", () => {
  it("lies on top, with the joint that is wanted", () => {
    // 30 in: three give 2-3/8 in, four would leave -1/8 in. 30 - 3 x 7-5/8 - 4 x 3/8 = 5-5/8, over half, 3-5/8.
    const wall = coursing({ ...onLedger, height: "30 in" });
    expect(told(wall)).toBe("4 courses, 1 cut, 3/8");
    expect(wall.cutHeight?.toString()).toBe("5.625 in");
    expect(wall.storyRod.map(({ cut, top }) => [cut, top.reads])).toEqual([[false, "7-5/8 in"], [false, "1 ft 3-5/8 in"], [false, "1 ft 11-5/8 in"], [true, "2 ft 5-5/8 in"]]);
  });

  it("takes narrower joints where that leaves it half a unit", () => {
    // 27-7/8 in: 27-7/8 - 22-7/8 - 1-1/2 = 3-1/2, under 3-5/8; with 3-5/8 the joints are (5 - 3-5/8) / 4 = 11/32.
    const wall = coursing({ ...onLedger, height: "27-7/8 in" });
    expect([told(wall), wall.cutHeight?.toString()]).toEqual(["4 courses, 1 cut, 11/32", "3.625 in"]);
  });

  it("parts into two, at the foot and on top, where one would be under half a unit", () => {
    // 26 in: one cut course would be 26 - 24 - 3/8 = 1-5/8. Two whole ones and four joints leave 9-1/4 in for two.
    const wall = coursing({ ...onLedger, height: "26 in" });
    expect([told(wall), wall.cutHeight?.toString()]).toEqual(["4 courses, 2 cut, 3/8", "4.625 in"]);
    expect(wall.storyRod.map(({ cut }) => cut)).toEqual([true, false, false, true]);
  });

  it("counts what fits with the joint that is wanted, whatever the ends", () => {
    // Unit to unit, 16.3 in: two units and one joint are 15-5/8; the joint of 1.05 in is too wide, and one cut would be 0.3 in. One
    // unit and two joints leave 7.925 in for two.
    const between = coursing({ ...eight, datum: "unit to unit", height: "16.3 in" });
    expect([told(between), between.cutHeight?.toString()]).toEqual(["3 courses, 2 cut, 3/8", "3.9625 in"]);
    // Bed to bed, 23.6 in: three would have joints of 0.242 in; two and three joints leave 7.225 in.
    const onTop = coursing({ ...onLedger, height: "23.6 in" });
    expect([told(onTop), onTop.cutHeight?.toString()]).toEqual(["3 courses, 1 cut, 3/8", "7.225 in"]);
  });

  it("says so, and what the least cut is", () => {
    const { assumptions, cautions } = coursing.solve({ ...onLedger, height: "30 in" });
    expect(assumptions).toEqual([expect.stringMatching(/^leastCut: no piece smaller than half a unit/)]);
    expect(cautions.some((text) => text.includes("wet or with dust drawn off"))).toBe(true);
    expect(coursing.solve({ ...onLedger, height: "30 in", leastCut: "2 in" }).assumptions).toEqual([]);
    expect(coursing.solve({ ...onLedger, height: "80 in" }).cautions).toEqual([]);
  });

  it("is refused where it cannot be large enough", () => {
    const tried = coursing.try({ ...onLedger, height: "26 in", leastCut: "5 in" });
    expect(faults(tried)).toEqual(["refused height"]);
    expect(tried.ok ? "" : tried.problems[0]?.message).toMatch(/3 courses close with joints of 1\.041666667 in; with one of the courses cut there is less than 5 in .* with two of the courses cut there is less than 5 in/);
  });
});

describe("coursing: what has no answer", () => {
  it("is refused, all at once", () => {
    expect(faults(coursing.try({ ...eight, datum: "bed to bed", height: "80 in", bedJoint: { least: "1/2 in", wanted: "3/8 in", most: "1/4 in" } }))).toEqual(["tooLow bedJoint.wanted", "tooHigh bedJoint.wanted", "missing bedJointLies"]);
    expect(faults(coursing.try({ ...onLedger, datum: "opening", height: "80 in", unitHeights: [] }))).toEqual(["refused bedJointLies", "refused unitHeights"]);
    const heights = (count: number): object => ({ ...onLedger, height: "80 in", unitHeights: Array.from({ length: count }, () => "7-5/8 in") });
    expect([faults(coursing.try(heights(100))), faults(coursing.try(heights(101)))]).toEqual([[], ["refused unitHeights"]]);
    expect(faults(coursing.try({ ...onLedger, height: "80", tape: "1/8 in", unitHeights: ["0 in"] }))).toEqual(["noUnit height", "tooLow unitHeights.0", "notAChoice tape"]);
  });

  it("one unit from foot to top has no joint; less than the joints has no unit; and a rod ends at 1000 courses", () => {
    expect(faults(coursing.try({ ...eight, datum: "unit to unit", height: "7-5/8 in" }))).toEqual(["refused height"]);
    expect(faults(coursing.try({ ...eight, datum: "opening", height: "1/2 in" }))).toEqual(["refused height"]);
    expect(faults(coursing.try({ ...onLedger, height: "8008 in" }))).toEqual(["tooHigh height"]);
    expect(coursing({ ...onLedger, height: "8000 in" }).courses.toString()).toBe("1000");
  });
});

describe("coursing of random heights", () => {
  // In 1/240 in, whole numbers throughout: 80 of them in 1/3 in, 30 in 1/8 in.
  const parts = (number: number): string => `${String(number)}/240 in`;
  const over = { "unit to unit": -1, "bed to bed": 0, opening: 1 } as const;

  it("fills the height exactly; where some number closes in the range, none closes nearer; no cut is under half", () => {
    const draw = drawFrom(1921);
    const seen = { closes: 0, oneCut: 0, twoCuts: 0, refused: 0 };
    for (let turn = 0; turn < 150; turn += 1) {
      const [unit, least] = [draw.whole(300, 3000), draw.whole(20, 90)];
      const [wanted, height] = [least + draw.whole(0, 60), draw.whole(2000, 20000)];
      const most = wanted + draw.whole(0, 60);
      const datum = draw.one<keyof typeof over>(["unit to unit", "bed to bed", "opening"]);
      const tried = coursing.try({
        height: parts(height), unitHeights: [parts(unit)], bedJoint: { least: parts(least), wanted: parts(wanted), most: parts(most) }, datum, tape: "1/16 in",
        ...(datum === "bed to bed" ? { bedJointLies: draw.one(["under the unit", "over the unit"]) } : {}),
      });
      // By trying every number: (H - n u) / (n + k) against the range, compared as fractions.
      const closing = Array.from({ length: 120 }, (_, index) => index + 1)
        .filter((n) => n + over[datum] > 0)
        .map((n) => ({ n, left: height - n * unit, joints: n + over[datum] }))
        .filter(({ left, joints }) => left >= least * joints && left <= most * joints);
      const nearest = closing.map(({ left, joints }) => Math.abs(left / joints - wanted)).sort((a, b) => a - b)[0];
      if (!tried.ok) {
        expect([nearest, tried.problems.map(({ code }) => code)]).toEqual([undefined, ["refused"]]);
        seen.refused += 1;
        continue;
      }
      const { courses, cutCourses, cutHeight, bedJoint: joint, storyRod } = tried.solution.answers;
      const [n, cuts, wide] = [courses.toNumber(), cutCourses.toNumber(), joint.toNumber("in") * 240];
      const total = storyRod.map(({ unitHeight }) => unitHeight.to("in")).reduce((sum, one) => sum.plus(one));
      expect(total.plus(joint.to("in").times(n + over[datum])).times(240).toFixed(12)).toBe(height.toFixed(12));
      expect(wide).toBeGreaterThanOrEqual(least - 1e-9);
      expect(wide).toBeLessThanOrEqual(most + 1e-9);
      expect(cuts === 0).toBe(nearest !== undefined);
      if (nearest !== undefined) expect(Math.abs(wide - wanted)).toBeCloseTo(nearest, 9);
      if (cutHeight !== undefined) {
        expect(cutHeight.toNumber("in") * 240).toBeGreaterThanOrEqual((unit - wanted) / 2 - 1e-9);
        expect(cutHeight.toNumber("in") * 240).toBeLessThan(unit);
      }
      seen[cuts === 0 ? "closes" : cuts === 1 ? "oneCut" : "twoCuts"] += 1;
    }
    expect(Math.min(seen.closes, seen.oneCut, seen.twoCuts)).toBeGreaterThan(10);
    expect(seen.refused).toBeLessThan(10);
  }, 60_000);
});
