import { describe, expect, it } from "vitest";
import { boardScrews } from "../../src/fasteners/board-screws.js";
import { boardScrewsEdgeField } from "../../src/fasteners/board-screws-edge-field.js";

const board = { acrossStuds: "4 ft", alongStuds: "8 ft", studSpacing: "16 in", screwSpacing: "8 in", edgeSpacing: "4 in" } as const;

describe("boardScrewsEdgeField", () => {
  // Edge lines: 95.25/4 = 23.8, 24 spaces, 25 screws; two of them 50.
  // End rows: 47.25/4 = 11.8, 12 spaces, 13 screws, 11 between the corners; two of them 22.
  // Field: 4 - 2 = 2 lines of 95.25/8 = 11.9, 12 spaces, 13 screws, 11 between the end rows; 22. Together 94.
  it("4 x 8 ft, 4 in round the edges, 8 in in the field: 50 + 22 + 22 = 94", () => {
    const answers = boardScrewsEdgeField(board);
    expect(answers.perimeter.toString()).toBe("72");
    expect(answers.field.toString()).toBe("22");
    expect(answers.screws.toString()).toBe("94");
  });

  // Edge lines: 95.25/8, 12 spaces; end rows: 47.25/8 = 5.9, 6 spaces; ring 2 * 18 = 36; field 22. Together 58: the 52
  // of plain lines, and in each end row 7 - 4 = 3 more.
  it("with one spacing it differs from plain lines by the screws of the end rows alone", () => {
    expect(boardScrewsEdgeField({ ...board, edgeSpacing: "8 in" }).screws.toString()).toBe("58");
    expect(boardScrews({ acrossStuds: "4 ft", alongStuds: "8 ft", studSpacing: "16 in", screwSpacing: "8 in" }).screws.toString()).toBe("52");
  });

  // 96 - 3/4 and 48 - 3/4 in from corner screw to corner screw; 50 in cover three spacings of 16 in and a part: three lines.
  it("runs between the corner screws, and counts a line for a part of a spacing", () => {
    const { edgeRun, endRun } = boardScrewsEdgeField(board);
    expect([edgeRun, endRun].map(String)).toEqual(["95.25 in", "47.25 in"]);
    expect(boardScrewsEdgeField({ ...board, acrossStuds: "50 in" }).fieldLines.toString()).toBe("3");
  });

  it("a board of one stud spacing has no field", () => {
    expect(boardScrewsEdgeField({ ...board, acrossStuds: "16 in" }).field.toString()).toBe("0");
  });

  // 1200 x 2400 mm with 10 mm: edges 2380/119 = 20 spaces exactly; ends 1180/119 = 9.9, 10 spaces; ring 60.
  // Field at 600 mm: one line of 2380/238 = 10 spaces exactly, 9 screws. Together 69.
  it("runs that divide evenly take no space more", () => {
    const metric = { acrossStuds: "1200 mm", alongStuds: "2400 mm", studSpacing: "600 mm", screwSpacing: "238 mm", edgeSpacing: "119 mm", edgeDistance: "10 mm" } as const;
    expect(boardScrewsEdgeField(metric).screws.toString()).toBe("69");
  });

  it("refuses a board no wider or no longer than its two edge distances", () => {
    expect(boardScrewsEdgeField.try({ ...board, acrossStuds: "3/4 in" })).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["endRun"] }] });
    expect(boardScrewsEdgeField.try({ ...board, alongStuds: "3/4 in" })).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["edgeRun"] }] });
  });
});
