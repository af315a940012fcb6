// What a sheet of lath covers between its laps, as worked out under the laps of ASTM C1063 and of the Ontario Building Code.
import { describe, expect, it } from "vitest";
import { lathSheets } from "../../src/takeoff/lath-sheets.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("lathSheets", () => {
  it.each([vector("lap-lath-c1063"), vector("lap-lath-ontario")])("$id: $what", ({ inputs, expected }) => {
    const [, width, length] = /^(\d+) x (\d+) in$/.exec(inputs.sheet ?? "") ?? [];
    const sheet = { sheetWidth: `${width ?? ""} in`, sheetLength: `${length ?? ""} in`, waste: "0 %" } as const;
    const lapped = lathSheets({ ...sheet, area: "1000 ft2", sideLap: inputs.side as "1 in", endLap: inputs.end as "1 in" } as Parameters<typeof lathSheets>[0]);
    const whole = lathSheets({ ...sheet, area: "1000 ft2", sideLap: "0 in", endLap: "0 in" } as Parameters<typeof lathSheets>[0]);
    expectPrinted(whole.cover.toNumber("ft2"), expected.gross);
    expectPrinted(lapped.cover.toNumber("ft2"), expected.net);
    expectPrinted(100 * (1 - lapped.cover.toNumber("ft2") / whole.cover.toNumber("ft2")), expected.loss);
    // 1,000 ft2 by that cover, rounded up once.
    expect(lapped.toOrder.toNumber()).toBe(Math.ceil(1000 / (((Number(width) - Number.parseFloat(inputs.side ?? "")) * (Number(length) - Number.parseFloat(inputs.end ?? ""))) / 144)));
  });

  it("refuses a lap as wide as the sheet", () => {
    expect(faults(lathSheets.try({ area: "100 ft2", sheetWidth: "27 in", sheetLength: "96 in", sideLap: "27 in", endLap: "1 in", waste: "0 %" }))).toEqual(["tooLow widthBetweenLaps"]);
    expect(faults(lathSheets.try({ area: "100 ft2", sheetWidth: "27 in", sheetLength: "96 in", sideLap: "1 in", endLap: "96 in", waste: "0 %" }))).toEqual(["tooLow lengthBetweenLaps"]);
  });
});
