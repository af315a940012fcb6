import { describe, expect, it } from "vitest";
import { spreadAhead } from "../../src/mortar/index.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

const band = { openTime: "20 min", openShare: "100 %", placingRate: "24 ft2/h", height: "2 ft", longestRun: "10 ft" } as const;

describe("spreadAhead", () => {
  it("is rate times open time over the height of the band", () => {
    // 24 ft2/h x 1/3 h = 8 ft2; 8 / 2 = 4 ft
    const { open, covered, run, area } = spreadAhead(band);
    expect([open, covered, run, area].map(String)).toEqual(["20 min", "8 ft2", "4 ft", "8 ft2"]);
    expect(spreadAhead({ ...band, openShare: "25 %" }).run.toString()).toBe("1 ft");
  });

  it("names the run the job allows where that is shorter", () => {
    const hot = spreadAhead.solve({ ...band, longestRun: vector("hot-spread-ahead").expected.length as "4 ft", placingRate: "60 ft2/h" });
    expect([hot.answers.run, hot.answers.area].map(String)).toEqual(["4 ft", "8 ft2"]);
    expect(hot.steps.find(({ name }) => name === "run")?.governedBy).toBe("longestRun");
  });

  it("warns with what was read of open times, skins and heat", () => {
    const all = spreadAhead.solve(band).cautions.join(" ");
    expect([vector("skin-5-10min").inputs["after combing"], vector("hot-spread-ahead").expected.length].map((text) => all.includes(text ?? "-"))).toEqual([true, true]);
  });

  it("refuses no open time, a share above the whole, and what is no rate", () => {
    expect(faults(spreadAhead.try({ ...band, openShare: "101 %", openTime: "0 min" }))).toEqual(["tooLow openTime", "tooHigh openShare"]);
    expect(faults(spreadAhead.try({ ...band, placingRate: "24 ft2" }))).toEqual(["wrongDimension placingRate"]);
    expect(faults(spreadAhead.try({ ...band, longestRun: undefined }))).toEqual(["missing longestRun"]);
  });
});
