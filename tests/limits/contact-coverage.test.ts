import { describe, expect, it } from "vitest";
import { contactCoverage } from "../../src/limits/contact-coverage.js";
import { faults } from "../support/faults.js";
import { vector, type Vector } from "../support/vectors.js";

type Job = Parameters<typeof contactCoverage>[0];

/** The two verdicts on a unit of 100 in2 with one void, in hundredths of it. */
const verdicts = (use: Job["use"], voids: readonly string[], voidRule: Job["voidRule"] = "none"): (string | undefined)[] => {
  const tried = contactCoverage.try({ unit: { by: "area", area: "100 in2" }, voids, use, voidRule });
  return tried.ok ? [tried.solution.answers.share.verdict, tried.solution.answers.largestVoid?.verdict] : faults(tried).slice();
};

describe("contactCoverage", () => {
  const cases: readonly (readonly [Job["use"], Vector, string])[] = [
    ["inside, dry", vector("ansi-coverage-dry"), vector("ansi-coverage-dry").expected.coverage ?? ""],
    ["gauged panel on a wall", vector("coverage-80"), vector("ansi-gauged-panel-coverage").expected.walls ?? ""],
    ["gauged panel on a floor", vector("coverage-85"), vector("ansi-gauged-panel-coverage").expected.floors ?? ""],
    ["outside or wet", vector("coverage-95"), vector("coverage-95").expected.coverage ?? ""],
  ];
  it.each(cases)("%s: at the least share, a hair over and a hair under", (use, { expected }, least) => {
    expect(expected.coverage).toBe(least);
    const short = 100 - Number.parseFloat(least);
    const share = (by: number): string | undefined => verdicts(use, [`${String(short + by)} in2`])[0];
    expect([share(-0.0001), share(0), share(0.0001)]).toEqual(["within", "within", "under"]);
  });

  it("wants all of the back of natural stone, so that any void is too much", () => {
    expect(vector("coverage-100").expected.coverage).toBe("100 %");
    expect(verdicts("natural stone", [])).toEqual(["within", undefined]);
    expect(verdicts("natural stone", ["0.0001 in2"])[0]).toBe("under");
  });

  it("holds the largest void to the 2 in2 of either rule: at it, a hair under and a hair over", () => {
    const rows = [vector("max-void").expected.void, vector("ansi-gauged-panel-coverage").expected.max_void, vector("ansi-coverage-dry").note];
    expect(rows.map((text) => /2 in2/.exec(text ?? "")?.[0])).toEqual(["2 in2", "2 in2", "2 in2"]);
    for (const rule of ["ANSI A108.19", "ANSI A108.5"] as const) {
      const largest = (size: string): string | undefined => verdicts("outside or wet", [size], rule)[1];
      expect([largest("1.9999 in2"), largest("2 in2"), largest("2.0001 in2")]).toEqual(["within", "within", "over"]);
    }
  });

  it("gives two answers: 97.5 % passes 95 %, and 3.1 in2 does not pass 2 in2", () => {
    // 12 x 24 = 288 in2; 3.1 + 1.6 + 2.4 = 7.1; 1 - 7.1/288 = 0.9753
    const unit = contactCoverage({ unit: { by: "sides", length: "24 in", height: "12 in" }, voids: ["1.6 in2", "3.1 in2", "2.4 in2"], use: "outside or wet", voidRule: "ANSI A108.19" });
    expect(unit.share.measured.to("%").toFixed(1)).toBe("97.5");
    expect([unit.share.verdict, unit.largestVoid?.verdict, unit.largestVoid?.measured.toString()]).toEqual(["within", "over", "3.1 in2"]);
    // and the other way round: many small voids
    expect(verdicts("outside or wet", ["1.9 in2", "1.9 in2", "1.9 in2"], "ANSI A108.19")).toEqual(["under", "within"]);
  });

  it("tells the largest void where no rule is named, and does not judge it", () => {
    expect(verdicts("outside or wet", ["4 in2"])).toEqual(["within", "not on file"]);
  });

  it("tells all that is wrong at once", () => {
    expect(verdicts("outside or wet", ["60 in2", "40.001 in2"])).toEqual(["tooLow voids.share"]);
    expect(faults(contactCoverage.try({ unit: { by: "area" }, voids: ["0 in2"], use: "outside" }))).toEqual(["missing unit.area", "tooLow voids.0", "notAChoice use", "missing voidRule"]);
  });
});
