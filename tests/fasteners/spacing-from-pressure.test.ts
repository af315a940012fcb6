import { describe, expect, it } from "vitest";
import { spacingFromPressure } from "../../src/fasteners/spacing-from-pressure.js";

const line = { pressure: "30 psf", studSpacing: "16 in", allowablePullOut: "72 lbf", allowableBoardPullThrough: "26 lbf", allowableScrewTension: "190 lbf" } as const;

describe("spacingFromPressure", () => {
  // 30 psf * 16/12 ft = 40 lb/ft. Pull-out 72/40 = 1.8 ft = 21.6 in; board 26/40 = 0.65 ft = 7.8 in; screw 190/40 =
  // 4.75 ft = 57 in; 8 in by practice. 7.8 in, rounded down 7.5 in; 40 * 7.5/12 = 25 lb on a screw.
  it("by hand", () => {
    const answers = spacingFromPressure(line);
    expect(answers.lineLoad.toString()).toBe("40 lbf/ft");
    expect([answers.pullOut, answers.boardPullThrough, answers.screwTension, answers.exactSpacing, answers.spacing].map(String)).toEqual(["21.6 in", "7.8 in", "57 in", "7.8 in", "7.5 in"]);
    expect(answers.load.toString()).toBe("25 lbf");
  });

  // 25 lb: 25/40 ft = 7.5 in, which stays 7.5 in. A hair less falls to 7 in.
  it("keeps a spacing that is a whole number of half inches", () => {
    expect(spacingFromPressure({ ...line, allowableBoardPullThrough: "25 lbf" }).spacing.toString()).toBe("7.5 in");
    expect(spacingFromPressure({ ...line, allowableBoardPullThrough: "24.9999999999 lbf" }).spacing.toString()).toBe("7 in");
  });

  it("twice the pressure halves what the loads allow", () => {
    const [once, twice] = [spacingFromPressure(line), spacingFromPressure({ ...line, pressure: "60 psf" })];
    expect(once.boardPullThrough.to("in").div(twice.boardPullThrough.to("in")).toString()).toBe("2");
  });

  // 1.6 lb: 1.6/40 ft = 0.48 in, less than the half inch.
  it("refuses what leaves no half inch", () => {
    expect(spacingFromPressure.try({ ...line, allowablePullOut: "1.6 lbf" })).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["spacing"] }] });
    // 5/3 lb: 0.5 in.
    expect(spacingFromPressure({ ...line, allowablePullOut: "5/3 lbf" }).spacing.toString()).toBe("0.5 in");
  });
});
