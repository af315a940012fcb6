import { describe, expect, it } from "vitest";
import { boardModules } from "../../src/fasteners/board-modules.js";

describe("boardModules", () => {
  it.each([
    // 36/16 = 2.25: 2 whole, 32 in, 4 in past it.
    ["36 in", "16 in", "2", "32", "4"],
    ["4 ft", "16 in", "3", "48", "0"],
    // 48/19.2 = 2.5: 2 whole, 38.4 in, 9.6 in past it; 96/19.2 = 5 exactly.
    ["48 in", "19.2 in", "2", "38.4", "9.6"],
    ["96 in", "19.2 in", "5", "96", "0"],
    ["12 in", "16 in", "0", "0", "12"],
  ] as const)("%s on studs at %s", (acrossStuds, studSpacing, whole, cutTo, pastStud) => {
    const answers = boardModules({ acrossStuds, studSpacing });
    expect(answers.wholeModules.toString()).toBe(whole);
    expect(answers.cutTo.to("in").toString()).toBe(cutTo);
    expect(answers.pastStud.to("in").toString()).toBe(pastStud);
  });

  it("a spacing of thirds divides exactly: 48 in on studs at 48/7 in", () => {
    expect(boardModules({ acrossStuds: "48 in", studSpacing: "48/7 in" }).pastStud.toString()).toBe("0 in");
  });

  it("refuses nought", () => {
    const none = boardModules.try({ acrossStuds: "0 in", studSpacing: "0 in" });
    expect(none.ok ? [] : none.problems.map(({ code, path }) => [code, ...path])).toEqual([["tooLow", "acrossStuds"], ["tooLow", "studSpacing"]]);
  });
});
