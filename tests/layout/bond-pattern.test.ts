import { describe, expect, it } from "vitest";
import { bondPattern, type BondPattern } from "../../src/layout/bond-pattern.js";
import { bondShift } from "../../src/layout/bond-shift.js";
import type { BondCourse } from "../../src/layout/bond-course.js";
import { faults } from "../support/faults.js";
import { drawFrom } from "../support/random.js";

const headJoint = { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" } as const;
const twelve = { unitLength: "11-5/8 in", headJoint } as const;
const plain = { kind: "plain" } as const;
const joint = { kind: "joint" } as const;
const corner = { kind: "corner", longLeg: "8 in", shortLeg: "4 in", firstCourse: "long leg" } as const;
const half = { ...twelve, left: plain, right: plain, offset: "50 %" } as const;

/** `5.625 + 7 x 11.625 + 5.625`: lengths in inches, whole ones together. */
function drawn({ pieces }: BondCourse): string {
  const runs: { is: string; length: string; count: number }[] = [];
  for (const { is, length } of pieces) {
    const last = runs.at(-1);
    const text = length.to("in").toString();
    if (last?.is === is && last.length === text && is === "whole") last.count += 1;
    else runs.push({ is, length: text, count: 1 });
  }
  return runs.map(({ is, length, count }) => `${is === "corner leg" ? "leg " : is === "cut" ? "cut " : `${String(count)} x `}${length}`).join(" + ");
}

const both = ({ courses }: BondPattern): readonly string[] => courses.map(drawn);

describe("bondPattern without corners", () => {
  it("closes with whole units, and with a half at both ends of the next course", () => {
    // 8 x 12 - 3/8 = 95-5/8. The next: 5-5/8 + 3/8 + 7 x 12 + 5-5/8 = 95-5/8.
    const pattern = bondPattern({ ...half, length: "95-5/8 in", courses: 5 });
    expect(both(pattern)).toEqual(["8 x 11.625", "cut 5.625 + 7 x 11.625 + cut 5.625"]);
    expect(pattern.lap?.toString()).toBe("6 in");
    // Three courses of 8 and two of 7 with 2 cut.
    expect([pattern.wholeUnits, pattern.cutUnits].map(String)).toEqual(["38", "4"]);
  });

  it("closes with whole units and a half, at one end and at the other", () => {
    // 8 x 12 + 5-5/8 = 101-5/8.
    expect(both(bondPattern({ ...half, length: "101-5/8 in" }))).toEqual(["8 x 11.625 + cut 5.625", "cut 5.625 + 8 x 11.625"]);
    // 102 in: 8-1/2 units are 98-13/16, which leaves 3-3/16 over 7-1/2 joints, 0.425 in; its half is (11.625 - 0.425) / 2.
    const wider = bondPattern({ ...half, length: "102 in" });
    expect(both(wider)).toEqual(["8 x 11.625 + cut 5.6", "cut 5.6 + 8 x 11.625"]);
    expect(wider.courses[0].headJoint.toString()).toBe("0.425 in");
  });

  it("takes the half only where that comes nearer to the joint wanted than whole units do", () => {
    // 477-5/8 in: 40 units leave 12-5/8 in over 39 joints, 0.324 in; 39-1/2 leave 18.4375 over 38-1/2, 0.479: both in the range.
    // 469-5/8 in: 39 units leave 16-1/4 over 38, 0.428; 39-1/2 leave 10.4375 over 38-1/2, 0.271.
    expect([both(bondPattern({ ...half, length: "477-5/8 in" }))[0], both(bondPattern({ ...half, length: "469-5/8 in" }))[0]]).toEqual(["40 x 11.625", "39 x 11.625"]);
  });

  it("takes the half with the narrowest joint and with the widest, and where it is asked for alone", () => {
    // 8-1/2 units are 98-13/16 in; 7-1/2 joints of 1/4 or 1/2 in more. The half is half of what a joint leaves of a unit.
    expect(both(bondPattern({ ...half, length: "100-11/16 in" }))[0]).toBe("8 x 11.625 + cut 5.6875");
    const widest = bondPattern.solve({ ...half, length: "102-9/16 in" });
    expect(both(widest.answers)[0]).toBe("8 x 11.625 + cut 5.5625");
    expect(widest.parts.map(({ id }) => id)).toContain("layout.joint-unit-to-unit");
    // With joints in line 101-5/8 in are centred: 101-5/8 - 7 x 11-5/8 - 8 x 3/8 leaves 17-1/4.
    expect(both(bondPattern({ ...half, offset: 0, length: "101-5/8 in" }))).toEqual(Array(2).fill("cut 8.625 + 7 x 11.625 + cut 8.625"));
  });

  it("gives or takes a whole unit and a joint where an end piece comes out too short or too long", () => {
    // 99 in, centred with 7-5/16; three quarters of 12 in are 9: 7-5/16 - 9 + 12 and 7-5/16 + 9 - 12.
    expect(both(bondPattern({ ...half, offset: "3/4", length: "99 in", leastCut: "4 in" }))[1]).toBe("cut 10.3125 + 7 x 11.625 + cut 4.3125");
  });

  it("has at least two pieces in a course", () => {
    expect(faults(bondPattern.try({ ...half, offset: 0, right: joint, length: "12 in" }))).toEqual(["refused length"]);
    // 11-5/8, two joints and twice 8 in.
    expect(both(bondPattern({ ...half, offset: 0, length: "28-3/8 in" }))[0]).toBe("cut 8 + 1 x 11.625 + cut 8");
  });

  it("may be two units long, or a unit and a half", () => {
    expect(both(bondPattern({ ...half, offset: 0, length: "23-5/8 in" }))).toEqual(["2 x 11.625", "2 x 11.625"]);
    expect(both(bondPattern({ ...half, length: "17-5/8 in" }))).toEqual(["1 x 11.625 + cut 5.625", "cut 5.625 + 1 x 11.625"]);
  });

  it("tells the least cut it took, where it cut and none was given", () => {
    const told = (more: object): readonly boolean[] => {
      const { assumptions, cautions } = bondPattern.solve({ ...half, length: "95-5/8 in", ...more });
      return [assumptions.some((text) => text.startsWith("leastCut:")), cautions.some((text) => text.startsWith("Cut stone wet"))];
    };
    expect([told({}), told({ leastCut: "5 in" }), told({ offset: 0 }), told({ offset: 0, length: "99 in" })]).toEqual([[true, true], [false, true], [false, false], [true, true]]);
  });

  it("a joint at an end is one joint more", () => {
    // 96 in: 8 units and 8 joints; 96-3/8: 9 joints, from the left end on.
    expect(both(bondPattern({ ...half, right: joint, length: "96 in" }))[0]).toBe("8 x 11.625");
    const { courses } = bondPattern({ ...half, left: joint, right: joint, length: "96-3/8 in" });
    expect(courses[0].pieces[0]?.left.toString()).toBe("0.375 in");
    expect(drawn(courses[1])).toBe("cut 5.625 + 7 x 11.625 + cut 5.625");
  });

  it("is centred, with the same cut at both ends, where it does not close", () => {
    // 99 in, joints in line: 7 whole and 8 joints are 84-3/8; 14-5/8 for two. One cut of 2-5/8 would be a sliver.
    expect(both(bondPattern({ ...half, offset: 0, length: "99 in" }))).toEqual(["cut 7.3125 + 7 x 11.625 + cut 7.3125", "cut 7.3125 + 7 x 11.625 + cut 7.3125"]);
    expect(bondPattern.solve({ ...half, offset: 0, length: "99 in" }).cautions.some((text) => text.includes("Head joints"))).toBe(false);
  });

  it("shifts by a third, where cuts of a third may be", () => {
    // u - 4 = 7-5/8 at one end; at the other 4 - 3/8 = 3-5/8 is what two thirds and a joint leave of a unit.
    const third = { ...half, offset: "1/3", length: "95-5/8 in" } as const;
    const refused = bondPattern.try(third);
    expect(faults(refused)).toEqual(["refused length"]);
    const says = (offset: string): string => {
      const tried = bondPattern.try({ ...half, offset, length: "95-5/8 in" });
      return tried.ok ? "" : (tried.problems[0]?.message ?? "");
    };
    // Two thirds leave 3-5/8 at the first end. A fiftieth, 0.24 in, leaves no piece at the last one: 11-5/8 + 0.24 is more than a unit,
    // and a unit and its joint less nothing.
    expect([says("1/3"), says("2/3"), says("2 %").includes("can be is")]).toEqual([expect.stringContaining("can be is 3.625 in"), expect.stringContaining("can be is 3.625 in"), false]);
    expect(says("2 %")).not.toBe("");
    const pattern = bondPattern({ ...third, leastCut: "3-1/2 in" });
    expect([both(pattern)[1], pattern.lap?.toString()]).toEqual(["cut 7.625 + 7 x 11.625 + cut 3.625", "4 in"]);
  });

  it("refuses slivers, and tells how long the shorter piece can be", () => {
    // Centred with 7-5/16; shifted by 6 in the next course ends in 1-5/16.
    const tried = bondPattern.try({ ...half, length: "99 in" });
    expect(tried.ok ? "" : tried.problems[0]?.message).toMatch(/pieces of 7\.3125 in and 7\.3125 in.*can be is 1\.3125 in.*least cut of 5\.625 in/);
    expect(both(bondPattern({ ...half, length: "99 in", leastCut: "1-1/4 in" }))[1]).toBe("cut 1.3125 + 8 x 11.625 + cut 1.3125");
  });
});

describe("bondPattern from corners inward", () => {
  it("a corner and a plain end: legs turned about, the cut away from the corner", () => {
    // 101 in: 101 - 8 = 93; 7 units and 8 joints are 84-3/8, the cut 8-5/8. 101 - 4 = 97; 8 and 8 are 96, joints of 1/2 in.
    const pattern = bondPattern({ ...twelve, left: corner, right: plain, length: "101 in" });
    expect(both(pattern)).toEqual(["leg 8 + 7 x 11.625 + cut 8.625", "leg 4 + 8 x 11.625"]);
    expect(pattern.courses.map((course) => course.headJoint.toString())).toEqual(["0.375 in", "0.5 in"]);
    expect(both(bondPattern({ ...twelve, left: plain, right: corner, length: "101 in" }))[0]).toBe("cut 8.625 + 7 x 11.625 + leg 8");
  });

  it("two corners: the field between the legs has a joint at both ends, and its cut lies midway", () => {
    // 100 - 16 = 84 = 7 u + 8 j, j = 21/64; 100 - 8 = 92: 7 u and 9 j are 84-3/4, the cut 7-1/4.
    const pattern = bondPattern({ ...twelve, left: corner, right: corner, length: "100 in" });
    expect(both(pattern)).toEqual(["leg 8 + 7 x 11.625 + leg 8", "leg 4 + 3 x 11.625 + cut 7.25 + 4 x 11.625 + leg 4"]);
    expect(pattern.courses[0].headJoint.toJSON().value).toBe("21/64");
  });

  it("long against short: each course has one of each", () => {
    // 100 - 12 = 88: 7 u is 81-3/8, 6-5/8 over 8 joints is too much; 6 u and 8 joints leave 15-1/4 for two, 7-5/8 each
    // (one cut would be 88 - 81-3/8 - 3-3/8 = 3-1/4).
    expect(both(bondPattern({ ...twelve, left: corner, right: { ...corner, firstCourse: "short leg" }, length: "100 in" }))).toEqual([
      "leg 8 + 3 x 11.625 + cut 7.4375 + cut 7.4375 + 3 x 11.625 + leg 4",
      "leg 4 + 3 x 11.625 + cut 7.4375 + cut 7.4375 + 3 x 11.625 + leg 8",
    ]);
  });

  it("refuses stubs under twice a leg, and takes two legs that just meet", () => {
    expect(faults(bondPattern.try({ ...twelve, left: corner, right: corner, length: "15-15/16 in" }))).toEqual(["refused length"]);
    expect(both(bondPattern({ ...twelve, left: corner, right: corner, length: "16-3/8 in" }))).toEqual(["leg 8 + leg 8", "leg 4 + cut 7.625 + leg 4"]);
    // With one corner alone a short wall is filled like any other: 12 - 8 - 3/8 is 3-5/8 of a cut, 12 - 4 - 3/8 is 7-5/8.
    expect(both(bondPattern({ ...twelve, left: corner, right: plain, length: "12 in", leastCut: "3-1/2 in" }))).toEqual(["leg 8 + cut 3.625", "leg 4 + cut 7.625"]);
    // Exactly twice a leg: no joint between the long ones, be they in the first course or in the second.
    const noRoom = (firstCourse: "long leg" | "short leg"): string => {
      const tried = bondPattern.try({ ...twelve, left: { ...corner, firstCourse }, right: { ...corner, firstCourse }, length: "16 in" });
      expect(faults(tried)).toEqual(["refused length"]);
      return tried.ok ? "" : (tried.problems[0]?.message ?? "");
    };
    expect([noRoom("long leg"), noRoom("short leg")]).toEqual([expect.stringContaining("course 1"), expect.stringContaining("course 2")]);
    // The widest joint still lies between two legs.
    expect(both(bondPattern({ ...twelve, unitLength: "7-3/4 in", left: corner, right: corner, length: "16-1/2 in" }))[0]).toBe("leg 8 + leg 8");
  });

  it("takes legs that are alike, and warns of a single cut", () => {
    // Legs of 8 in in both courses: the joints lie over each other.
    const alike = bondPattern.solve({ ...twelve, left: { ...corner, shortLeg: "8 in" }, right: plain, length: "101 in" });
    expect([both(alike.answers), alike.answers.lap?.toString()]).toEqual([Array(2).fill("leg 8 + 7 x 11.625 + cut 8.625"), "0 in"]);
    const one = bondPattern.solve({ ...twelve, left: corner, right: plain, length: "101 in" });
    expect([one.answers.courses.map(({ cutUnits }) => cutUnits), one.cautions.some((text) => text.startsWith("Cut stone wet"))]).toEqual([[1, 0], true]);
  });

  it("cautions where head joints come near each other", () => {
    // Legs of 8 and 7 in shift the joints by 1 in, less than a quarter of 11-5/8.
    const { cautions } = bondPattern.solve({ ...twelve, left: { ...corner, shortLeg: "7 in" }, right: plain, length: "103-5/8 in" });
    expect(cautions.some((text) => text.startsWith("Head joints of the two courses come within"))).toBe(true);
    // A quarter of 11-5/8 in is 2-29/32 in: legs of 8 and 5-3/32 in shift the joints by just that, where all joints are 3/8 in.
    const even = { least: "3/8 in", wanted: "3/8 in", most: "3/8 in" } as const;
    const quarter = bondPattern.solve({ ...twelve, headJoint: even, left: { ...corner, shortLeg: "5-3/32 in" }, right: plain, length: "101 in" });
    expect(quarter.answers.lap?.to("in").toString()).toBe("2.90625");
    expect(quarter.cautions.some((text) => text.startsWith("Head joints"))).toBe(false);
    expect(quarter.assumptions.some((text) => text.includes("leg"))).toBe(true);
  });
});

describe("bondPattern: what has no answer", () => {
  it("asks for the offset without corners, and takes none with them", () => {
    expect(faults(bondPattern.try({ ...half, offset: undefined, length: "8 ft" }))).toEqual(["missing offset"]);
    expect(faults(bondPattern.try({ ...half, left: corner, length: "95-5/8 in" }))).toEqual(["refused offset"]);
    expect(faults(bondPattern.try({ ...half, left: { ...corner, shortLeg: "9 in" }, offset: undefined, length: "8 ft" }))).toEqual(["tooHigh left.shortLeg"]);
    expect(faults(bondPattern.try({ ...half, right: { ...corner, shortLeg: "9 in" }, offset: undefined, length: "8 ft" }))).toEqual(["tooHigh right.shortLeg"]);
  });

  it("refuses one unit, and a length under that", () => {
    expect(faults(bondPattern.try({ ...half, length: "11-5/8 in" }))).toEqual(["refused length"]);
    expect(faults(bondPattern.try({ ...half, length: "5 in" }))).toEqual(["refused length"]);
    expect(faults(bondPattern.try({ ...half, offset: "100 %", length: "0 in" }))).toEqual(["tooLow length", "tooHigh offset"]);
  });
});

describe("bondShift", () => {
  it("is a share of unit and joint", () => {
    const { shift, module } = bondShift({ unitLength: "290 mm", headJoint: "10 mm", offset: "1/3" });
    expect([shift, module].map(String)).toEqual(["100 mm", "300 mm"]);
  });
});

type End = { readonly kind: "plain" | "joint" } | { readonly kind: "corner"; readonly longLeg: string; readonly shortLeg: string; readonly firstCourse: "long leg" | "short leg" };

describe("bondPattern of random courses", () => {
  // In 1/48 in.
  const parts = (number: number): string => `${String(number)}/48 in`;

  it("pieces and joints fill each course exactly; none is too short or too long; joints lie in the range", () => {
    const draw = drawFrom(4172);
    let [laid, closed] = [0, 0];
    for (let turn = 0; turn < 120; turn += 1) {
      const [unit, least, length] = [draw.whole(200, 800), draw.whole(8, 20), draw.whole(1500, 6000)];
      const [wanted, leastCut] = [least + draw.whole(0, 10), draw.whole(20, 90)];
      const most = wanted + draw.whole(0, 10);
      const leg = (): End => ({
        kind: "corner", longLeg: parts(draw.whole(250, 400)), shortLeg: parts(draw.whole(100, 249)), firstCourse: draw.one(["long leg", "short leg"]),
      });
      const ends = [draw.one<End>([plain, joint, leg()]), draw.one<End>([plain, joint, leg()])] as const;
      const hasCorner = ends.some(({ kind }) => kind === "corner");
      const tried = bondPattern.try({
        length: parts(length), unitLength: parts(unit), headJoint: { least: parts(least), wanted: parts(wanted), most: parts(most) }, left: ends[0], right: ends[1], leastCut: parts(leastCut),
        ...(hasCorner ? {} : { offset: draw.one(["0", "1/4", "1/3", "1/2"]) }),
      });
      if (!tried.ok) {
        expect(tried.problems.map(({ code, path }) => `${code} ${path.join(".")}`)).toEqual(["refused length"]);
        continue;
      }
      laid += 1;
      // The lap: the least distance of any joint of the one course from any of the other.
      const [ours, theirs] = tried.solution.answers.courses.map(({ pieces }) => pieces.slice(0, -1).map(({ left, length: long }) => left.to("in").plus(long.to("in")).times(48).toNumber()));
      const apart = (ours ?? []).flatMap((a) => (theirs ?? []).map((b) => Math.abs(a - b)));
      expect((tried.solution.answers.lap?.toNumber("in") ?? Infinity) * 48).toBeCloseTo(Math.min(...apart), 9);
      for (const { pieces, headJoint: width, wholeUnits, cutUnits, leastCutLength } of tried.solution.answers.courses) {
        const cuts = pieces.filter(({ is }) => is === "cut").map(({ length: long }) => long.toNumber("in"));
        expect(leastCutLength?.toNumber("in")).toBe(cuts.length === 0 ? undefined : Math.min(...cuts));
        const wide = width.to("in").times(48);
        let at = ends[0].kind === "joint" ? wide : wide.times(0);
        for (const { is, left, length: long } of pieces) {
          expect(left.to("in").times(48).minus(at).abs().lt("1e-20")).toBe(true);
          if (is === "whole") expect(long.to("in").times(48).minus(unit).abs().lt("1e-20")).toBe(true);
          if (is === "cut") expect([long.toNumber("in") * 48 >= leastCut - 1e-9, long.toNumber("in") * 48 < unit]).toEqual([true, true]);
          at = left.to("in").plus(long.to("in")).times(48).plus(wide);
        }
        expect(at.minus(ends[1].kind === "joint" ? 0 : wide).minus(length).abs().lt("1e-20")).toBe(true);
        expect([wide.gte(least - 1e-9), wide.lte(most + 1e-9)]).toEqual([true, true]);
        expect([pieces.filter(({ is }) => is === "corner leg").length, wholeUnits + cutUnits]).toEqual([ends.filter(({ kind }) => kind === "corner").length, pieces.filter(({ is }) => is !== "corner leg").length]);
        if (cutUnits === 0) closed += 1;
      }
    }
    expect(laid).toBeGreaterThan(60);
    expect(closed).toBeGreaterThan(20);
  }, 60_000);
});
