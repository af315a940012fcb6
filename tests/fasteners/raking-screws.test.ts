// A row of screws along a raking edge, by hand.
import { describe, expect, it } from "vitest";
import { rakingScrews } from "../../src/fasteners/raking-screws.js";
import { faults } from "../support/faults.js";

describe("rakingScrews", () => {
  it("on an edge of 3 : 4 : 5", () => {
    // 36 and 48 in: 60 in; less 3/4 in, 59-1/4 in: 7.4 spaces of 8 in, so 8, and 9 screws.
    const { length, run, spaces, screws, actualSpacing } = rakingScrews({ levelLength: "48 in", rise: "36 in", screwSpacing: "8 in" });
    expect([length, run, spaces, screws].map(String)).toEqual(["60 in", "59.25 in", "8", "9"]);
    expect(actualSpacing.to("in").toString()).toBe("7.40625");
  });

  it("on an edge of 45 degrees", () => {
    // 48 x the root of 2 is 67.88 in; less 3/4 in 67.13: 8.39 spaces, so 9, and 10 screws.
    const { length, screws } = rakingScrews({ levelLength: "48 in", rise: "48 in", screwSpacing: "8 in" });
    expect([length.to("in").toFixed(2), screws.toString()]).toEqual(["67.88", "10"]);
  });

  it("takes no space more where the row comes out even", () => {
    // 300, 400 and 500 mm; less twice 10 mm, 480 mm: four spaces of 120 mm.
    expect(rakingScrews({ levelLength: "400 mm", rise: "300 mm", screwSpacing: "120 mm", edgeDistance: "10 mm" }).screws.toString()).toBe("5");
    expect(rakingScrews({ levelLength: "400 mm", rise: "300 mm", screwSpacing: "119.9 mm", edgeDistance: "10 mm" }).screws.toString()).toBe("6");
  });

  it("refuses an edge without room for two screws, and a level or upright one", () => {
    expect(faults(rakingScrews.try({ levelLength: "12 mm", rise: "16 mm", screwSpacing: "200 mm", edgeDistance: "10 mm" }))).toEqual(["tooLow run"]);
    expect(faults(rakingScrews.try({ levelLength: "48 in", rise: "0 in", screwSpacing: "8 in" }))).toEqual(["tooLow rise"]);
  });
});
