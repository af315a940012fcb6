import { describe, expect, it } from "vitest";
import { spreadingRate } from "../../src/film/spreading-rate.js";
import { wetFilm } from "../../src/film/wet-film.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

describe("spreadingRate", () => {
  it.each(vectors("grid-vs"))("from dry film, by GNU Units: $id", ({ inputs, expected }) => {
    const { allCoats } = spreadingRate({ dryFilm: inputs.dft as "1 mil", volumeSolids: inputs.volume_solids as "100 %", coats: 1 });
    expectPrinted(allCoats.to("ft2/gal"), expected.spreading_rate);
    expectPrinted(allCoats.to("m2/L"), expected.spreading_rate_si);
  });

  it.each([vector("sr-hdbk1110-50vs-2mil"), vector("sr-hdbk1110-50vs-4mil")])("is within 0.3 % of the handbook's, which takes 1600 for 1604.1667: $id", ({ inputs, expected }) => {
    const { allCoats } = spreadingRate({ dryFilm: inputs.dft as "2 mil", volumeSolids: inputs.volume_solids as "50 %", coats: 1 });
    const printed = Number(/^\d+/.exec(expected.spreading_rate ?? "")?.[0]);
    expect(Math.abs(allCoats.toNumber("ft2/gal") / printed - 1)).toBeLessThan(0.003);
  });

  it("is 800 ft2/gal at 1 mil and 50 %, not the 600 of a misprint in MIL-HDBK-1110", () => {
    const row = vector("sr-hdbk1110-50vs-1mil");
    expect(row.misprint).toBe(true);
    const { allCoats } = spreadingRate({ dryFilm: row.inputs.dft as "1 mil", volumeSolids: row.inputs.volume_solids as "50 %", coats: 1 });
    // 0.50 x 19250/12 = 802.08; with 1600 it is 800.
    expect(allCoats.to("ft2/gal").toFixed(2)).toBe("802.08");
  });

  it.each(vectors("deadvol-"))("fills the texture in the first coat: $id", ({ inputs, expected }) => {
    const volumeSolids = inputs.volume_solids as "60 %";
    // The vector gives what fills the texture as dry film; the wet coating that leaves it is more.
    const firstCoatTexture = wetFilm({ dryBuild: inputs.dead_layer_dry as "5 mil", volumeSolids, coats: 1 }).wetFilm;
    const rate = spreadingRate({ dryFilm: inputs.dft as "20 mil", volumeSolids, coats: 2, firstCoatTexture });
    expectPrinted(rate.firstCoat.to("ft2/gal"), expected.rate);
    expect(rate.furtherCoat.toString()).toBe(spreadingRate({ dryFilm: inputs.dft as "20 mil", volumeSolids, coats: 1 }).allCoats.toString());
  });

  it("from wet film: 20 mil goes 80.2 ft2/gal, two coats half as far", () => {
    // 19250/12/20 = 80.208, /40 = 40.104
    const rate = spreadingRate({ wetFilm: "20 mil", coats: 2 });
    expect([rate.wetFilm.toString(), rate.firstCoat.to("ft2/gal").toFixed(3), rate.allCoats.to("ft2/gal").toFixed(3)]).toEqual(["20 mil", "80.208", "40.104"]);
  });

  it("says that a smooth face is assumed", () => {
    expect(spreadingRate.solve({ wetFilm: "20 mil", coats: 1 }).assumptions).toEqual([expect.stringContaining("smooth")]);
    expect(spreadingRate.solve({ wetFilm: "20 mil", coats: 1, firstCoatTexture: "0 mil" }).assumptions).toEqual([]);
  });

  it("refuses both films, neither, a dry film without solids, and solids with a wet film", () => {
    const codes = (input: object): readonly unknown[] => {
      const tried = spreadingRate.try({ coats: 1, ...input });
      return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")]);
    };
    expect(codes({})).toEqual([["either", "film"]]);
    expect(codes({ wetFilm: "20 mil", dryFilm: "12 mil", volumeSolids: "60 %" })).toEqual([["either", "film"]]);
    expect(codes({ dryFilm: "12 mil" })).toEqual([["missing", "volumeSolids"]]);
    expect(codes({ wetFilm: "20 mil", volumeSolids: "60 %" })).toEqual([["refused", "volumeSolids"]]);
    expect(codes({ dryFilm: "12 mil", volumeSolids: 60 })).toEqual([["tooHigh", "volumeSolids"]]);
    expect(codes({ dryFilm: "12 mil", volumeSolids: 0 })).toEqual([["tooLow", "volumeSolids"]]);
  });
});
