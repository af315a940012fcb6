// Figures at their very edge, and more of a thing than a wall has.
import { describe, expect, it } from "vitest";
import { bondPattern } from "../../src/layout/bond-pattern.js";
import { headsAndSills } from "../../src/layout/heads-and-sills.js";
import { faults } from "../support/faults.js";

const joint = { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" } as const;
const corner = { kind: "corner", longLeg: "8 in", shortLeg: "4 in", firstCourse: "long leg" } as const;

describe("bondPattern", () => {
  it("wants its joint between the narrowest and the widest", () => {
    const wall = { length: "96 in", unitLength: "11-5/8 in", left: { kind: "plain" }, right: { kind: "plain" }, offset: "50 %" };
    expect(faults(bondPattern.try({ ...wall, headJoint: { ...joint, wanted: "1/8 in" } }))).toContain("tooLow headJoint.wanted");
    expect(faults(bondPattern.try({ ...wall, headJoint: { ...joint, wanted: "5/8 in" } }))).toContain("tooHigh headJoint.wanted");
  });

  it("lets two legs meet with the narrowest joint between them", () => {
    // 8 + 1/4 + 8 = 16-1/4 in; in the next course 4 + 1/4 + 7-3/4 + 1/4 + 4.
    const stub = bondPattern({ length: "16-1/4 in", unitLength: "7-3/4 in", headJoint: joint, left: corner, right: corner });
    expect(JSON.stringify(stub)).toContain('"corner leg"');
    expect(bondPattern.try({ length: "16-1/8 in", unitLength: "7-3/4 in", headJoint: joint, left: corner, right: corner }).ok).toBe(false);
  });

  it("refuses a stub under twice the longest leg, whichever end that is at", () => {
    const long = { ...corner, longLeg: "12 in" };
    for (const [left, right] of [[corner, long], [long, corner]]) {
      const tried = bondPattern.try({ length: "23 in", unitLength: "11-5/8 in", headJoint: joint, left, right });
      expect(tried.ok ? "" : tried.problems[0]?.wanted).toContain("twice a leg of 12 in");
    }
  });
});

describe("headsAndSills", () => {
  const opening = { sill: "32 in", head: "80 in" };

  it("takes up to 100 heights of units and 1,000 heads and sills", () => {
    const wall = (heights: number, openings: number): object => ({ unitHeights: Array.from({ length: heights }, () => "7-5/8 in"), bedJoint: "3/8 in", openings: Array.from({ length: openings }, () => opening) });
    expect(headsAndSills.try(wall(100, 1)).ok).toBe(true);
    expect(faults(headsAndSills.try(wall(101, 1)))).toEqual(["refused unitHeights"]);
    expect(faults(headsAndSills.try(wall(1, 501)))).toEqual(["refused openings"]);
    expect(faults(headsAndSills.try(wall(1, 0)))).toEqual(["refused openings"]);
  });

  it("takes openings within 1,000 of the lowest units, and no higher", () => {
    const wall = (head: string): ReturnType<typeof headsAndSills.try> => headsAndSills.try({ unitHeights: ["7-5/8 in"], bedJoint: "3/8 in", openings: [{ head }] });
    expect(wall("7625 in").ok).toBe(true);
    const higher = wall("7626 in");
    expect(faults(higher)).toEqual(["tooHigh openings"]);
    expect(higher.ok ? "" : higher.problems[0]?.message).toMatch(/1,?000 courses/);
  });

  it("holds a strip against half of the unit it is cut from, and warns of one that is less", () => {
    // Courses of 7-5/8 and 3-5/8 in turn: lines at 8, 12, 20 in. Half of the units is 3-5/8 and 1-5/8 in.
    const strips = (...heads: readonly string[]): readonly unknown[] => {
      const { answers, cautions } = headsAndSills.solve({ unitHeights: ["7-5/8 in", "3-5/8 in"], bedJoint: "3/8 in", openings: heads.map((head) => ({ head: head as "1 in" })) });
      return [...answers.levels.map(({ best, cut }) => `${best} ${String(cut?.height)} ${String(cut?.underLeastCut)}`), cautions.some((text) => text.startsWith("A strip under the least cut"))];
    };
    // From 9.9 in to the line at 12, less the joint, 1.725 in of stone; from 10 in just 1-5/8; from 10.1 in less.
    expect([strips("9.9 in"), strips("10 in"), strips("10.1 in")]).toEqual([["cut 2.1 in false", false], ["cut 2 in false", false], ["cut 1.9 in true", true]]);
    // From 5 in to the line at 8 less the joint, 2-5/8 in of a unit of 7-5/8.
    expect([strips("5 in"), strips("5 in", "9.9 in")]).toEqual([["cut 3 in true", true], ["cut 3 in true", "cut 2.1 in false", true]]);
  });

  it("calls openings by their names, or counts them, and assumes nothing that is told", () => {
    const wall = { unitHeights: ["7-5/8 in"], bedJoint: "3/8 in", openings: [{ sill: "32 in" }, { name: "door", head: "80 in" }] } as const;
    const { answers, assumptions } = headsAndSills.solve(wall);
    expect(answers.levels.map(({ opening: name }) => name)).toEqual(["opening 1", "door"]);
    const rules = (told: readonly string[]): readonly string[] => told.map((text) => text.split(":")[0] ?? "").filter((name) => ["spreadOver", "jointChange", "leastCut"].includes(name));
    expect(rules(assumptions)).toEqual(["spreadOver", "jointChange", "leastCut"]);
    expect(rules(headsAndSills.solve({ ...wall, spreadOver: 8, leastCut: "3 in" }).assumptions)).toEqual(["jointChange"]);
  });

  it("spreads over a single joint, down to none", () => {
    const first = (unit: string, bedJoint: string, sill: string): readonly unknown[] => {
      const [level] = headsAndSills({ unitHeights: [unit], bedJoint: bedJoint, openings: [{ sill: sill }] }).levels;
      return [level?.best, level?.spread?.fromCourse, level?.spread?.toCourse, level?.spread?.each.toString()];
    };
    // The first course line is at 8 in.
    expect(first("7-5/8 in", "3/8 in", "8-1/32 in")).toEqual(["spread", 1, 1, "0.03125 in"]);
    expect(first("7-15/16 in", "1/16 in", "7-15/16 in")).toEqual(["spread", 1, 1, "-0.0625 in"]);
    expect(first("7-31/32 in", "1/32 in", "7-15/16 in")[0]).toBe("cut");
  });
});
