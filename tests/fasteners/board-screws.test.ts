import { describe, expect, it } from "vitest";
import { boardScrews } from "../../src/fasteners/board-screws.js";
import { vector } from "../support/vectors.js";

const upright = { acrossStuds: "4 ft", alongStuds: "8 ft", studSpacing: "16 in", screwSpacing: "8 in" } as const;

describe("boardScrews by hand", () => {
  // Lines: ceil(across / stud spacing) + 1. Screws in a line: ceil((along - 2 * 3/8 in) / screw spacing) + 1.
  it("4 x 8 ft upright, 16 in and 8 in: 48/16 = 3, 4 lines; 95.25/8 = 11.9, 12 spaces; 4 * 13 = 52", () => {
    const board = boardScrews(upright);
    expect(board.lines.toString()).toBe("4");
    expect(board.screwsPerLine.toString()).toBe("13");
    expect(board.screws.toString()).toBe("52");
    // 95.25 in / 12 = 7.9375 in, not over 8 in.
    expect(board.actualSpacing.to("in").toString()).toBe("7.9375");
  });

  it("studs at 24 in: 48/24 = 2, 3 lines; 3 * 13 = 39", () => {
    expect(boardScrews({ ...upright, studSpacing: "24 in" }).screws.toString()).toBe("39");
  });

  it("4 x 10 ft: 119.25/8 = 14.9, 15 spaces; 4 * 16 = 64", () => {
    expect(boardScrews({ ...upright, alongStuds: "10 ft" }).screws.toString()).toBe("64");
  });

  it("4 x 8 ft laid level: 96/16 = 6, 7 lines; 47.25/8 = 5.9, 6 spaces; 7 * 7 = 49", () => {
    expect(boardScrews({ ...upright, acrossStuds: "8 ft", alongStuds: "4 ft" }).screws.toString()).toBe("49");
  });

  it("3 x 5 ft: 36/16 = 2.25, 4 lines; 59.25/8 = 7.4, 8 spaces; 4 * 9 = 36", () => {
    expect(boardScrews({ ...upright, acrossStuds: "3 ft", alongStuds: "5 ft" }).screws.toString()).toBe("36");
  });

  it("32 x 48 in laid level: 48/16 = 3, 4 lines; 31.25/8 = 3.9, 4 spaces; 4 * 5 = 20", () => {
    expect(boardScrews({ ...upright, acrossStuds: "48 in", alongStuds: "32 in" }).screws.toString()).toBe("20");
  });

  it("4 x 8 ft at 7 in: 95.25/7 = 13.6, 14 spaces; 4 * 15 = 60", () => {
    expect(boardScrews({ ...upright, screwSpacing: "7 in" }).screws.toString()).toBe("60");
  });

  it("1200 x 2400 mm, 600 mm and 200 mm: 3 lines; (2400 - 2 * 9.525)/200 = 11.9, 12 spaces; 3 * 13 = 39", () => {
    const metric = { acrossStuds: "1200 mm", alongStuds: "2400 mm", studSpacing: "600 mm", screwSpacing: "200 mm" } as const;
    expect(boardScrews(metric).screws.toString()).toBe("39");
  });
});

describe("boardScrews where a run divides evenly", () => {
  it("3 x 5 ft with 2 in at the ends: 56/8 is 7 spaces, not 8; 4 * 8 = 32", () => {
    const board = boardScrews({ ...upright, acrossStuds: "3 ft", alongStuds: "5 ft", edgeDistance: "2 in" });
    expect(board.spaces.toString()).toBe("7");
    expect(board.screws.toString()).toBe("32");
    expect(board.actualSpacing.to("in").toString()).toBe("8");
  });

  it.each([vector("fasteners-metric-floor-1"), vector("fasteners-metric-floor-2")])("$id: $inputs.height at $inputs.spacing", ({ inputs, expected, exactArgument }) => {
    // The height of the row is the run: the board is longer by its two edge distances of 10 mm.
    expect(inputs.height).toBe("2.4 m");
    const board = boardScrews({ acrossStuds: "1.2 m", alongStuds: "2.42 m", studSpacing: "0.6 m", screwSpacing: inputs.spacing as "0.1 m", edgeDistance: "10 mm" });
    expect(`${board.spaces.toString()}/1`).toBe(exactArgument);
    expect(`${board.screwsPerLine.toString()} fasteners per stud`).toBe(expected["fasteners per stud"]);
  });

  it("a hair over an even run takes one space more", () => {
    expect(boardScrews({ ...upright, alongStuds: "56.7500001 in" }).spaces.toString()).toBe("8");
    expect(boardScrews({ ...upright, alongStuds: "56.75 in" }).spaces.toString()).toBe("7");
  });
});

describe("boardScrews everywhere", () => {
  const lengths = Array.from({ length: 60 }, (_, index) => 12 + index * 1.7);

  it("no space is wider than the one asked for, and one space fewer would be", () => {
    for (const length of lengths) {
      const board = boardScrews({ ...upright, alongStuds: { value: length, unit: "in" } });
      expect(board.actualSpacing.to("in").lte(8)).toBe(true);
      const fewer = board.spaces.to().minus(1);
      if (!fewer.isZero()) expect(board.run.to("in").div(fewer).gt(8)).toBe(true);
    }
  });

  it("the same board in millimetres takes as many screws", () => {
    for (const length of lengths) {
      const inches = boardScrews({ ...upright, alongStuds: { value: length, unit: "in" } });
      const millimetres = boardScrews({ acrossStuds: "1219.2 mm", alongStuds: { value: inches.run.to("mm").plus("19.05"), unit: "mm" }, studSpacing: "406.4 mm", screwSpacing: "203.2 mm" });
      expect(millimetres.screws.toString()).toBe(inches.screws.toString());
    }
  });

  it("says what it assumes and what the code's own edge distance is", () => {
    const { assumptions } = boardScrews.solve(upright);
    expect(assumptions).toHaveLength(1);
    // IRC 2018, Table R702.3.6 note d, has 3/8 in as the least.
    expect(assumptions[0]).toContain(`taken as ${vector("rule-irc-gypsum-7in-38").expected.edgeMin ?? ""}`);
  });
});

describe("boardScrews refuses", () => {
  it("a board no longer than its two edge distances", () => {
    const short = boardScrews.try({ ...upright, alongStuds: "3/4 in" });
    expect(short).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["run"] }] });
    expect(boardScrews.try({ ...upright, alongStuds: "0.7501 in" }).ok).toBe(true);
  });

  it("nought for a size, a spacing or an edge distance, all at once", () => {
    const none = boardScrews.try({ acrossStuds: "0 in", alongStuds: "0 in", studSpacing: "0 in", screwSpacing: "0 in", edgeDistance: "0 in" });
    expect(none.ok ? [] : none.problems.map(({ code, path }) => [code, path[0]])).toEqual(
      ["acrossStuds", "alongStuds", "studSpacing", "screwSpacing", "edgeDistance"].map((name) => ["tooLow", name]),
    );
  });
});
