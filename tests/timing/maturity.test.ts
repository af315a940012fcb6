import { describe, expect, it } from "vitest";
import { maturity } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";
import { readingsFrom, steady } from "./records.js";

const intervalsIn = (text: string | undefined): readonly { readonly lasts: string; readonly temperature: string }[] =>
  (text ?? "").split("; ").map((one) => {
    const [hours = "", celsius = ""] = one.split("@");
    return { lasts: `${hours} h`, temperature: `${celsius} degC` };
  });

describe("maturity", () => {
  it.each(vectors("history-row-"))("over 0 and over -10 degC: $id", ({ inputs, expected }) => {
    const intervals = intervalsIn(inputs["intervals (h@degC)"]);
    expectPrinted(maturity({ datumTemperature: "0 degC", intervals }).maturity.to("degC h"), expected["TTF datum 0"]);
    const over = maturity({ datumTemperature: "-10 degC", intervals });
    expectPrinted(over.maturity.to("degC h"), expected["TTF datum -10"]);
    expect(over.intervals.at(-1)?.total.toString()).toBe(over.maturity.toString());
  });

  it("600 degC d, as the Chinese code counts: days at or below 0 degC count for nothing", () => {
    expect(vector("gb50204-600-degC-days").expected.age).toContain("600 degC.d");
    const days = [...steady("15 degC", 20), ...steady("-5 degC", 10), ...steady("0 degC", 5), ...steady("20 degC", 15)].map((temperature) => ({ lasts: "1 d", temperature }));
    // 20 x 15 + 15 x 20 = 600
    const { maturity: sum, elapsed, intervals } = maturity({ datumTemperature: "0 degC", intervals: days });
    expect([sum.to("degC d").toString(), elapsed.to("d").toString()]).toEqual(["600", "50"]);
    expect(intervals.filter(({ counted }) => counted.toNumber() === 0)).toHaveLength(15);
  });

  it("over a record by the clock, with one interval shown", () => {
    const record = { zone: "Europe/Berlin", every: "1 h", readingIs: "momentary", readings: readingsFrom("2026-03-29T00:00Z", ["10 degC", "20 degC", "30 degC"]) } as const;
    const { answers, parts } = maturity.solve({ datumTemperature: "0 degC", record });
    // 15 + 25; the clocks of Berlin go from 02:00 to 03:00 at 01:00 UTC that day
    expect(answers.maturity.to("degC h").toString()).toBe("40");
    expect(answers.intervals.map(({ from }) => from)).toEqual(["2026-03-29T01:00+01:00[Europe/Berlin]", "2026-03-29T03:00+02:00[Europe/Berlin]"]);
    expect(parts.map(({ id }) => id)).toEqual(["timing.interval-maturity"]);
  });

  it("asks for its datum", () => {
    expect(faults(maturity.try({ intervals: [{ lasts: "1 h", temperature: "20 degC" }] }))).toEqual(["missing datumTemperature"]);
    expect(faults(maturity.try({ datumTemperature: "0 degC" }))).toEqual(["either history"]);
  });
});
