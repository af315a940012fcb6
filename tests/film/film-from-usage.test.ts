import { describe, expect, it } from "vitest";
import { filmFromUsage } from "../../src/film/film-from-usage.js";
import { expectPrinted, vector } from "../support/vectors.js";

const job = { volumeUsed: "40 gal", area: "1540 ft2", lossShare: "10 %", volumeSolids: "60 %", coats: 2, specified: "24 mil" } as const;

describe("filmFromUsage", () => {
  it("a gallon of 100 % solids on 1604 ft2 proves 1 mil (Paints and Coatings Resource Center, December 2007)", () => {
    const row = vector("sr-pcrc-1604");
    const { volume, volume_solids: solids, area } = row.inputs;
    const proved = filmFromUsage({ volumeUsed: volume as "1 gal", area: area as "1604 ft2", lossShare: 0, volumeSolids: solids as "100 %", coats: 1, specified: "1 mil" });
    expectPrinted(proved.dryBuild.to("mil"), row.expected.dft);
  });

  it("80 ft2 to the gallon is 20 mil wet and, at 65 %, 13 mil dry (Spray Polyurethane Foam Alliance, spring 2015)", () => {
    const row = vector("sr-spfa-80ft2gal");
    const proved = filmFromUsage({ volumeUsed: "1 gal", area: "80 ft2", lossShare: 0, volumeSolids: row.expected.implied_volume_solids as "65 %", coats: 1, specified: "13 mil" });
    expectPrinted(proved.wetFilm.to("mil"), row.expected.wft);
    expectPrinted(proved.dryBuild.to("mil"), row.inputs.dft_printed);
  });

  it("40 gal on 1540 ft2 with a tenth lost: two coats of 18.75 mil wet, 22.5 mil dry, where 24 was specified", () => {
    // 36 gal x 231 = 8316 in3; / (1540 x 144 in2) = 0.0375 in; / 2 = 18.75 mil; x 0.60 x 2 = 22.5; / 24 = 93.75 %
    const { onWall, wetFilm, dryBuild, builtShare } = filmFromUsage(job);
    expect([onWall, wetFilm, dryBuild, builtShare].map(String)).toEqual(["36 gal", "18.75 mil", "22.5 mil", "93.75 %"]);
  });

  it("thinner makes the film wetter and no drier one thicker", () => {
    const thinned = filmFromUsage({ ...job, thinner: "10 %" });
    expect([thinned.wetFilm.toString(), thinned.dryBuild.toString()]).toEqual(["20.625 mil", "22.5 mil"]);
  });

  it("refuses a loss of all, solids of nought and 55 for 55 %", () => {
    const codes = (input: object): readonly unknown[] => {
      const tried = filmFromUsage.try({ ...job, ...input });
      return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")]);
    };
    expect(codes({ lossShare: "100 %" })).toEqual([["tooHigh", "lossShare"]]);
    expect(codes({ volumeSolids: 0 })).toEqual([["tooLow", "volumeSolids"]]);
    expect(codes({ volumeSolids: 55 })).toEqual([["tooHigh", "volumeSolids"]]);
    expect(codes({ specified: undefined })).toEqual([["missing", "specified"]]);
  });
});
