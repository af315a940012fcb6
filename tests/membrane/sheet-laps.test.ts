import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sheetLaps } from "../../src/membrane/sheet-laps.js";

const wall = { wallLength: "60 ft", wallHeight: "9 ft", sheetWidth: "36 in", rollLength: "150 ft", sideLap: "6 in", endLap: "6 in" } as const;

describe("sheetLaps", () => {
  it("9 ft of 36 in sheet lapped 6 in takes 4 courses; a roll of 150 ft gives two strips of 60 ft", () => {
    // (108 - 6) / 30 = 3.4; 150 / 60 = 2.5; 4 strips / 2 = 2 rolls
    const { courses, piecesPerCourse, strips, endLaps, lastPiecesPerRoll, rolls } = sheetLaps(wall);
    expect([courses, piecesPerCourse, strips, endLaps, lastPiecesPerRoll, rolls].map(String)).toEqual(["4", "1", "4", "0", "2", "2"]);
  });

  it("counts rolls by strips, where by area fewer would seem to do", () => {
    // 80 ft strips: one a roll, so 4 rolls; by area 4 x 80 / 150 = 2.1, which would be 3.
    expect(sheetLaps({ ...wall, wallLength: "80 ft" }).rolls.toString()).toBe("4");
    expect(sheetLaps({ ...wall, wallLength: "75 ft" }).rolls.toString()).toBe("2");
  });

  it("adds no course where the height comes out, and one for the least above", () => {
    // n courses cover 36 + (n - 1) x 30 in: three 96 in, four 126 in
    const courses = (wallHeight: string): string => sheetLaps({ ...wall, wallHeight: wallHeight as "9 ft" }).courses.toString();
    expect([courses("96 in"), courses("96.001 in"), courses("126 in"), courses("126.001 in"), courses("36 in"), courses("2 in")]).toEqual(["3", "4", "4", "5", "1", "1"]);
  });

  it("pieces a course with end laps where the wall outruns a roll", () => {
    // 200 ft: a whole roll of 150 ft and a piece of 50.5 ft with its lap; two such pieces a roll: 4 + 2 rolls, 4 end laps
    const { piecesPerCourse, strips, endLaps, lastPiece, lastPiecesPerRoll, rolls } = sheetLaps({ ...wall, wallLength: "200 ft" });
    expect([piecesPerCourse, strips, endLaps, lastPiece, lastPiecesPerRoll, rolls].map(String)).toEqual(["2", "8", "4", "50.5 ft", "2", "6"]);
  });

  it("adds no piece where the length comes out", () => {
    // two rolls lapped 6 in cover 299.5 ft
    expect(sheetLaps({ ...wall, wallLength: "299.5 ft" }).rolls.toString()).toBe("8");
    expect(sheetLaps({ ...wall, wallLength: "299.51 ft" }).piecesPerCourse.toString()).toBe("3");
    expect(sheetLaps({ ...wall, wallLength: "150 ft" }).piecesPerCourse.toString()).toBe("1");
    expect(sheetLaps({ ...wall, wallLength: "3 in" }).rolls.toString()).toBe("1");
  });

  it("is the same wall in metric: 4.2 m of 1 m sheet lapped 200 mm take exactly 5 courses", () => {
    // 1 + 4 x 0.8 = 4.2 m
    expect(sheetLaps({ wallLength: "20 m", wallHeight: "4.2 m", sheetWidth: "1 m", rollLength: "50 m", sideLap: "200 mm", endLap: "150 mm" }).courses.toString()).toBe("5");
  });

  it("lays no course too few, and buys sheet enough for all strips", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 400 }), fc.integer({ min: 20, max: 200 }), (length, height, roll) => {
        const { courses, strips, endLaps, rolls } = sheetLaps({ ...wall, wallLength: { value: length, unit: "ft" }, wallHeight: { value: height, unit: "in" }, rollLength: { value: roll, unit: "ft" } });
        const rows = Number(courses.toString());
        expect(36 + (rows - 1) * 30).toBeGreaterThanOrEqual(height);
        expect(rows === 1 || 36 + (rows - 2) * 30 < height).toBe(true);
        expect(Number(strips.toString()) - Number(endLaps.toString())).toBe(rows);
        expect(Number(rolls.toString()) * roll).toBeGreaterThanOrEqual(rows * length + Number(endLaps.toString()) / 2);
      }),
      { numRuns: 60 },
    );
  });

  it("refuses laps as wide as the sheet or as long as the roll", () => {
    const codes = (input: object): readonly unknown[] => {
      const tried = sheetLaps.try({ ...wall, ...input });
      return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")]);
    };
    expect(codes({ sideLap: "36 in" })).toEqual([["tooLow", "courseCover"]]);
    expect(codes({ sideLap: "35.9 in" })).toEqual([]);
    expect(codes({ endLap: "150 ft" })).toEqual([["tooLow", "pieceCover"]]);
    expect(codes({ sideLap: "-1 in", wallHeight: "0 ft" })).toEqual([["tooLow", "wallHeight"], ["tooLow", "sideLap"]]);
  });
});
