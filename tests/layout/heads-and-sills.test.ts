import { describe, expect, it } from "vitest";
import { baseMove } from "../../src/layout/base-move.js";
import { errorPerJoint } from "../../src/layout/error-per-joint.js";
import { headsAndSills, type HeadsAndSills } from "../../src/layout/heads-and-sills.js";
import { faults } from "../support/faults.js";
import { drawFrom } from "../support/random.js";

const eight = { unitHeights: ["7-5/8 in"], bedJoint: "3/8 in" } as const;

/** `sill 4 cut -1/2`: the line, where the error is spent, and the error in inches. */
const told = ({ levels }: HeadsAndSills): readonly string[] => levels.map(({ is, line, best, error }) => `${is} ${String(line)} ${best} ${error.toJSON().value}`);

describe("headsAndSills", () => {
  it("by hand: a sill at 32 in and a head at 80 in are four and ten courses of 8 in", () => {
    expect(told(headsAndSills({ ...eight, openings: [{ sill: "32 in", head: "80 in" }] }))).toEqual(["sill 4 on the line 0", "head 10 on the line 0"]);
  });

  it("by hand: a head at 81 in is 0.1 in a joint over ten, past 1/16 in: move the base line or cut", () => {
    const door = headsAndSills({ ...eight, openings: [{ name: "door", head: "81 in" }] });
    expect(told(door)).toEqual(["head 10 cut 1"]);
    expect(door.levels[0]?.perJoint?.toString()).toBe("0.1 in");
    expect([door.baseMove.move, door.baseMove.worstLeft].map(String)).toEqual(["1 in", "0 in"]);
    // 88 - 81 = 7 in over the head, 6-5/8 of them stone.
    expect(door.levels[0]?.cut).toMatchObject({ toLine: 11, underLeastCut: false });
    expect(door.levels[0]?.cut?.height.toString()).toBe("7 in");
  });

  it("spreads 1/2 in over the ten joints below, 1/20 in each", () => {
    const door = headsAndSills({ ...eight, openings: [{ head: "80-1/2 in" }] });
    expect(told(door)).toEqual(["head 10 spread 1/2"]);
    expect(door.levels[0]?.spread?.each.toString()).toBe("0.05 in");
    expect(door.levels[0]?.spread).toMatchObject({ fromCourse: 1, toCourse: 10 });
    // Exactly 1/16 in a joint may be; a hair more may not.
    expect(told(headsAndSills({ ...eight, openings: [{ head: "80-5/8 in" }] }))).toEqual(["head 10 spread 5/8"]);
    expect(told(headsAndSills({ ...eight, openings: [{ head: "80.626 in" }] }))[0]).toContain("cut");
    expect(told(headsAndSills({ ...eight, openings: [{ head: "81 in" }], jointChange: "1/8 in" }))).toEqual(["head 10 spread 1"]);
    // Over twenty courses the ten next below are changed, no others.
    expect(headsAndSills({ ...eight, openings: [{ head: "159-3/4 in" }] }).levels[0]?.spread).toMatchObject({ fromCourse: 11, toCourse: 20 });
  });

  it("does not touch the joints that a level below has settled", () => {
    // The sill closes; the head has the six joints above it: 1/4 in over six.
    const window = headsAndSills({ ...eight, openings: [{ sill: "32 in", head: "80-1/4 in" }] });
    expect(window.levels[1]?.spread).toMatchObject({ fromCourse: 5, toCourse: 10 });
    expect(window.levels[1]?.spread?.each.toJSON().value).toBe("1/24");
    // 1/2 in over six is 1/12 in: no.
    expect(told(headsAndSills({ ...eight, openings: [{ sill: "32 in", head: "80-1/2 in" }] }))[1]).toBe("head 10 cut 1/2");
  });

  it("carries on from lines that have been raised, and leaves what is on them", () => {
    // The lower head raises its line by 1/2 in; another at 80-1/2 is on it; the sill at 120-1/2 too, five courses up.
    expect(told(headsAndSills({ ...eight, openings: [{ head: "80-1/2 in" }, { sill: "120-1/2 in" }, { head: "80-1/2 in" }] }))).toEqual(["head 10 spread 1/2", "head 10 on the line 1/2", "sill 15 on the line 1/2"]);
  });

  it("says where a strip under the least cut would run", () => {
    // 78 in: 2 in under line 10, a strip of 1-5/8 and a joint over the head.
    const given = { ...eight, openings: [{ head: "78 in" }] } as const;
    expect(headsAndSills(given).levels[0]?.cut).toMatchObject({ toLine: 10, underLeastCut: true });
    expect(headsAndSills.solve(given).cautions.some((text) => text.startsWith("A strip under the least cut"))).toBe(true);
    // Under a sill at 34 in: 2 in over line 4.
    expect(headsAndSills({ ...eight, openings: [{ sill: "34 in" }] }).levels[0]?.cut).toMatchObject({ toLine: 4, underLeastCut: true });
    expect(headsAndSills({ ...eight, openings: [{ sill: "34 in" }], leastCut: "1-1/2 in" }).levels[0]?.cut?.underLeastCut).toBe(false);
  });

  it("does not close a joint to less than nothing", () => {
    // Courses of 8 in; 79-1/2 in over ten joints is 1/20 in narrower each, and they are 1/32 in wide.
    const tight = { unitHeights: ["7-31/32 in"], bedJoint: "1/32 in", openings: [{ head: "79-1/2 in" }] } as const;
    expect(told(headsAndSills(tight))).toEqual(["head 10 cut -1/2"]);
    expect(told(headsAndSills({ ...tight, openings: [{ head: "80-1/2 in" }] }))).toEqual(["head 10 spread 1/2"]);
  });

  it("courses of several heights, and in millimetres", () => {
    // 200 + 100 mm and two joints of 10 mm: lines at 210, 320, 530, 640.
    const metric = headsAndSills({ unitHeights: ["200 mm", "100 mm"], bedJoint: "10 mm", openings: [{ sill: "320 mm", head: "643 mm" }] });
    expect(metric.levels.map(({ line, lineHeight, best }) => [line, lineHeight.to("mm").toString(), best])).toEqual([[2, "320", "on the line"], [4, "640", "spread"]]);
    expect(metric.levels[1]?.spread?.each.to("mm").toString()).toBe("1.5");
  });

  it("a sill below the first joint has none to spread over", () => {
    const low = headsAndSills({ ...eight, openings: [{ sill: "1 in" }] });
    expect([low.levels[0]?.line, low.levels[0]?.perJoint, low.levels[0]?.best]).toEqual([0, undefined, "cut"]);
  });

  it("refuses what makes no sense, all at once", () => {
    expect(faults(headsAndSills.try({ ...eight, unitHeights: [], openings: [{}, { sill: "80 in", head: "32 in" }] }))).toEqual(["refused unitHeights", "missing openings.0", "tooLow openings.1.head"]);
    expect(faults(headsAndSills.try({ ...eight, openings: [] }))).toEqual(["refused openings"]);
    expect(faults(headsAndSills.try({ ...eight, openings: [{ head: "700 ft" }] }))).toEqual(["tooHigh openings"]);
    expect(faults(headsAndSills.try({ ...eight, openings: [{ head: "80 in" }], spreadOver: 2.5 }))).toEqual(["refused spreadOver"]);
  });

  it("spread errors put their levels on the lines, and no joint is changed too much: random openings", () => {
    const draw = drawFrom(59);
    let spreads = 0;
    for (let turn = 0; turn < 40; turn += 1) {
      const openings = Array.from({ length: draw.whole(1, 4) }, () => {
        const sill = draw.whole(16, 900);
        return { sill: `${sill}/16 in` as const, head: `${sill + draw.whole(300, 1200)}/16 in` as const };
      });
      const { levels } = headsAndSills({ ...eight, openings, jointChange: "3/16 in" });
      // The joints as they come to be, one by one, from what is told.
      const joints = Array.from({ length: 300 }, () => 3 / 8);
      for (const { spread } of levels) for (let course = spread?.fromCourse ?? 1; course <= (spread?.toCourse ?? 0); course += 1) joints[course - 1] = (joints[course - 1] ?? 0) + (spread?.each.toNumber("in") ?? 0);
      expect(joints.every((joint) => Math.abs(joint - 3 / 8) <= 3 / 16 + 1e-12)).toBe(true);
      for (const { best, line, height, is, cut } of levels) {
        const lineAt = (number: number): number => joints.slice(0, number).reduce((sum, joint) => sum + 7.625 + joint, 0);
        if (best !== "cut") expect(lineAt(line)).toBeCloseTo(height.toNumber("in"), 9);
        else expect(Math.abs(lineAt(cut?.toLine ?? -1) - height.toNumber("in")), `${is} at ${height.toString()}`).toBeCloseTo(cut?.height.toNumber("in") ?? -1, 9);
        if (best === "spread") spreads += 1;
      }
    }
    expect(spreads).toBeGreaterThan(10);
  }, 60_000);
});

describe("errorPerJoint and baseMove", () => {
  it("share an error out", () => {
    expect(errorPerJoint({ error: "-1/2 in", joints: 8 }).perJoint.toString()).toBe("-0.0625 in");
    expect(faults(errorPerJoint.try({ error: "1 in", joints: 0 }))).toEqual(["tooLow joints"]);
  });

  it("move a base line midway between the worst errors", () => {
    // +1/2 and -1 in: 1/4 in down leaves 3/4 in either way.
    const base = baseMove({ mostError: "1/2 in", leastError: "-1 in" });
    expect([base.move, base.worstLeft].map(String)).toEqual(["-0.25 in", "0.75 in"]);
    expect(faults(baseMove.try({ mostError: "-1 in", leastError: "1/2 in" }))).toEqual(["tooLow worstLeft"]);
  });
});
