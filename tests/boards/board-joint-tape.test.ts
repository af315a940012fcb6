import { describe, expect, it } from "vitest";
import { boardJointTape } from "../../src/boards/board-joint-tape.js";
import { vector } from "../support/vectors.js";

const rollsOf = (printed: string | undefined): string => /^\d+/.exec(printed ?? "")?.[0] ?? "none";

describe("boardJointTape", () => {
  it("orders the rolls of the textbook (Pearson, Estimating in Building Construction, 7th ed., Ex. 16-3)", () => {
    const row = vector("textbook-tape-rolls-59");
    expect(row.inputs).toEqual({ tape: "2660 lf", waste: "10 %", roll: "50 ft" });
    // 2660 x 1.1 = 2926 ft; 2926 / 50 = 58.52
    const tape = boardJointTape({ jointLength: "2660 ft", overlaps: 0, rollLength: "50 ft", waste: "10 %" });
    expect(tape.withWaste.toString()).toBe("2926 ft");
    expect(tape.rolls.toString()).toBe(rollsOf(row.expected.rolls));
  });

  // The argument of the round-up is a whole number exactly, and binary floats take one roll too many.
  it.each([
    { row: vector("tape-rolls-2"), jointLength: "720 ft", rollLength: "66 ft" },
    { row: vector("tape-rolls-3"), jointLength: "420 ft", rollLength: "66 ft" },
    { row: vector("tape-rolls-4"), jointLength: "750 ft", rollLength: "75 ft" },
  ] as const)("lands exactly on a whole number of rolls and stays there: $row.id", ({ row, jointLength, rollLength }) => {
    const boards = { edge: Number(row.inputs.edge?.replace(" ft", "")), count: Number(row.inputs.boards) };
    expect(jointLength).toBe(`${String(Math.round(boards.edge * boards.count * 10) / 10)} ft`);
    expect(boardJointTape({ jointLength, overlaps: 0, rollLength, waste: "10 %" }).rolls.toString()).toBe(rollsOf(row.expected.rolls));
    // One overlap of a thousandth of an inch is one roll more.
    expect(boardJointTape({ jointLength, overlaps: 1, overlap: "1 mil", rollLength, waste: "10 %" }).rolls.toString()).toBe(String(Number(rollsOf(row.expected.rolls)) + 1));
  });

  it("takes 2 in an overlap, says so, and adds it for each", () => {
    // 200 ft + 24 x 2 in = 204 ft; x 1.1 = 224.4 ft; / 50 = 4.488
    const worked = boardJointTape.solve({ jointLength: "200 ft", overlaps: 24, rollLength: "50 ft", waste: "10 %" });
    expect(worked.answers.net.toString()).toBe("204 ft");
    expect(worked.answers.withWaste.toString()).toBe("224.4 ft");
    expect(worked.answers.rolls.toString()).toBe("5");
    expect(worked.assumptions).toHaveLength(1);
    expect(worked.assumptions[0]).toContain("common practice");
    expect(boardJointTape.solve({ jointLength: "200 ft", overlaps: 24, overlap: "2 in", rollLength: "50 ft", waste: "10 %" }).assumptions).toEqual([]);
  });

  it("asks for the overlaps, and refuses what is none", () => {
    const tried = boardJointTape.try({ jointLength: "0 ft", overlap: "-1 in", rollLength: "0 ft", waste: "100 %" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")])).toEqual([
      ["tooLow", "jointLength"],
      ["missing", "overlaps"],
      ["tooLow", "overlap"],
      ["tooLow", "rollLength"],
      ["tooHigh", "waste"],
    ]);
  });
});
