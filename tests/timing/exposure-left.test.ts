import { describe, expect, it } from "vitest";
import { exposureLeft, exposureShare } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";

describe("exposureLeft", () => {
  it("by hand: coated on 1 March, limit 60 days, clad on 25 April", () => {
    // 31 - 1 + 25 = 55 days; 55/60 = 92 %; 0.8 x 60 = 48 days after 1 March is 18 April; 60 days after it is 30 April
    const bare = exposureLeft({ coatedOn: "2026-03-01", claddingOn: "2026-04-25", exposureLimit: "60 d" });
    expect([bare.bare.toString(), bare.left.toString(), bare.used.to("%").toFixed(0), bare.state, bare.warnOn, bare.lastDay]).toEqual(["55 d", "5 d", "92", "close to the limit", "2026-04-18", "2026-04-30"]);
  });

  it("at the edges: a day before the warning, on it, on the limit, past it", () => {
    const state = (claddingOn: string): string => exposureLeft({ coatedOn: "2026-03-01", claddingOn, exposureLimit: "60 d" }).state;
    expect(["2026-04-17", "2026-04-18", "2026-04-30", "2026-05-01"].map(state)).toEqual(["within the limit", "close to the limit", "close to the limit", "over the limit"]);
  });

  it("counts days of the calendar over 29 February and a change of the clocks", () => {
    const days = (coatedOn: string, claddingOn: string): string => exposureLeft({ coatedOn, claddingOn, exposureLimit: "90 d" }).bare.toString();
    expect([days("2028-02-28", "2028-03-01"), days("2026-02-28", "2026-03-01"), days("2026-03-07", "2026-03-09"), days("2026-06-01", "2026-06-01")]).toEqual(["2 d", "1 d", "2 d", "0 d"]);
  });

  it("a warning day is never later than its share: 80 % of 31 days is 24.8, so day 24", () => {
    expect(exposureLeft({ coatedOn: "2026-03-01", claddingOn: "2026-03-02", exposureLimit: "31 d" }).warnOn).toBe("2026-03-25");
  });

  it("says that the share is assumed, where it is not given", () => {
    const given = { coatedOn: "2026-03-01", claddingOn: "2026-04-01", exposureLimit: "60 d" } as const;
    expect(exposureLeft.solve(given).assumptions).toEqual([expect.stringContaining("80 %")]);
    expect(exposureLeft.solve({ ...given, warnShare: "50 %" }).assumptions).toEqual([]);
    expect(exposureLeft({ ...given, warnShare: "50 %" }).warnOn).toBe("2026-03-31");
  });

  it("refuses days that are none, and cladding before the coat", () => {
    expect(faults(exposureLeft.try({ coatedOn: "1 March", claddingOn: "2026-02-30", exposureLimit: "60 d" }))).toEqual(["refused coatedOn", "refused claddingOn"]);
    expect(faults(exposureLeft.try({ coatedOn: "2026-03-02", claddingOn: "2026-03-01", exposureLimit: "60 d" }))).toEqual(["refused claddingOn"]);
    expect(faults(exposureLeft.try({ coatedOn: "2026-03-01", claddingOn: "2026-03-02", exposureLimit: "0 d" }))).toEqual(["tooLow exposureLimit"]);
  });
});

describe("exposureShare", () => {
  it("past the limit has less than nothing left", () => {
    const { used, left } = exposureShare({ bare: "75 d", exposureLimit: "60 d" });
    expect([used.to("%").toString(), left.toString()]).toEqual(["125", "-15 d"]);
  });
});
