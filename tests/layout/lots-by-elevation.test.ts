import { describe, expect, it } from "vitest";
import { lotsByElevation } from "../../src/layout/lots-by-elevation.js";
import { lotsForArea } from "../../src/layout/lots-for-area.js";
import { faults } from "../support/faults.js";
import { drawFrom } from "../support/random.js";

const three = { elevations: [{ name: "south", area: "1180 ft2" }, { name: "east", area: "500 ft2" }, { name: "west", area: "385 ft2" }], lotCover: "40 ft2", waste: "5 %" } as const;

describe("lotsByElevation", () => {
  it("by hand: 31 + 14 + 11, where one round-up orders 55", () => {
    // 1180 x 1.05 / 40 = 30.975; 500: 13.125; 385: 10.106; together 54.206.
    const lots = lotsByElevation(three);
    expect(lots.elevations.map(({ name, net, lots: own }) => [name, net.to().toFixed(3), own.toString()])).toEqual([["south", "30.975", "31"], ["east", "13.125", "14"], ["west", "10.106", "11"]]);
    expect([lots.lots, lots.pooled, lots.more].map(String)).toEqual(["56", "55", "1"]);
  });

  it("is exact: 100 ft2 with 10 % from lots of 22 ft2 is 5, where floats order 6", () => {
    expect(Math.ceil((100 * (1 + 10 / 100)) / 22)).toBe(6);
    expect(lotsForArea({ area: "100 ft2", waste: "10 %", lotCover: "22 ft2" }).lots.toString()).toBe("5");
  });

  it("in metric units", () => {
    // 110 x 1.05 / 3.5 = 33.
    expect(lotsByElevation({ elevations: [{ name: "north", area: "110 m2" }], lotCover: "3.5 m2", waste: "5 %" }).lots.toString()).toBe("33");
  });

  it("never orders less than one round-up, nor more than a lot an elevation besides", () => {
    const draw = drawFrom(55);
    for (let turn = 0; turn < 40; turn += 1) {
      const elevations = Array.from({ length: draw.whole(1, 6) }, (_, index) => ({ name: String(index), area: `${String(draw.whole(1, 3000))}/7 ft2` as const }));
      const { more } = lotsByElevation({ elevations, lotCover: `${draw.whole(10, 60)} ft2`, waste: `${draw.whole(0, 20)} %` });
      expect(more.toNumber()).toBeGreaterThanOrEqual(0);
      expect(more.toNumber()).toBeLessThan(elevations.length);
    }
  });

  it("refuses two elevations of one name, none at all, and nonsense", () => {
    expect(faults(lotsByElevation.try({ ...three, elevations: [{ name: "south", area: "1 ft2" }, { name: "south", area: "2 ft2" }] }))).toEqual(["refused elevations.1.name"]);
    expect(faults(lotsByElevation.try({ ...three, elevations: [] }))).toEqual(["refused elevations"]);
    expect(faults(lotsByElevation.try({ elevations: [{ name: "south", area: "0 ft2" }], lotCover: "40", waste: 5 }))).toEqual(["tooLow elevations.0.area", "noUnit lotCover", "tooHigh waste"]);
  });
});
