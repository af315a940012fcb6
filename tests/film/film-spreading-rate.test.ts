import { describe, expect, it } from "vitest";
import { filmSpreadingRate } from "../../src/film/film-spreading-rate.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("filmSpreadingRate", () => {
  it("a gallon an inch thick covers 231 in2: a mil thick 231,000 in2, 19250/12 = 9625/6 ft2", () => {
    const rate = filmSpreadingRate({ wetFilm: "1 mil", coats: 1 }).allCoats;
    expect(rate.toJSON()).toEqual({ value: "9625/6", unit: "ft2/gal" });
  });

  it("a litre a millimetre thick covers a square metre", () => {
    expect(filmSpreadingRate({ wetFilm: "1 mm", coats: 1 }).allCoats.toString()).toBe("1 m2/L");
  });

  it("with texture for half as much again goes two thirds as far in the first coat (foam association's roughest face)", () => {
    const row = vector("film-verge-popcorn");
    expect(row.expected.extra_material).toBe(">= 50 % of theoretical");
    const rate = filmSpreadingRate({ wetFilm: "20 mil", coats: 2, firstCoatTexture: "10 mil" });
    expect(rate.firstCoat.to("ft2/gal").times(1.5).toFixed(20)).toBe(rate.furtherCoat.to("ft2/gal").toFixed(20));
    // Both coats: 1 / 50 mil, of 19250/12 ft2·mil/gal
    expect(rate.allCoats.toJSON().value).toBe("385/12");
  });

  it("prints the rates of a guide specification, and not its soft metric one (UFGS-02761N)", () => {
    const film = (rate: string): { value: string; unit: "mil" } => ({ value: `19250/${String(12 * Number(/^\d+/.exec(rate)?.[0]))}`, unit: "mil" });
    const near = vector("sr-ufgs-613");
    const rate = filmSpreadingRate({ wetFilm: film(near.inputs.spreading_rate ?? ""), coats: 1 }).allCoats;
    expectPrinted(rate.to("ft2/gal"), near.inputs.spreading_rate);
    // 250 ft2/gal is 6.1356 m2/L, which the specification cuts to 6.13.
    expect(rate.to("m2/L").toDecimalPlaces(2, 1).toString()).toBe(/^[\d.]+/.exec(near.expected.spreading_rate ?? "")?.[0]);
    const soft = vector("sr-ufgs-105");
    expect(soft.misprint).toBe(true);
    const exact = filmSpreadingRate({ wetFilm: film(soft.inputs.spreading_rate ?? ""), coats: 1 }).allCoats;
    expect(exact.to("m2/L").toFixed(2)).toBe("2.58");
  });

  it("refuses a film of nought, no coat, and a texture below nought", () => {
    const tried = filmSpreadingRate.try({ wetFilm: "0 mil", coats: 0, firstCoatTexture: "-1 mil" });
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["wetFilm", "coats", "firstCoatTexture"]);
  });
});
