import { describe, expect, it } from "vitest";
import { dryFilm } from "../../src/film/dry-film.js";
import { quantity } from "../../src/core/read-quantity.js";
import { expectPrinted, vector } from "../support/vectors.js";

const coat = { wetFilm: "20 mil", volumeSolids: "65 %", coats: 1 } as const;

describe("dryFilm", () => {
  it("is wet film times the solids by volume (MIL-HDBK-1110, section 2.1.5)", () => {
    const row = vector("wft-hdbk1110-formula");
    expect(row.inputs).toEqual({ wft: "10 mil", volume_solids: "50 %" });
    expectPrinted(dryFilm({ wetFilm: "10 mil", volumeSolids: "50 %", coats: 1 }).dryFilm.to("mil"), row.expected.dft);
  });

  it("20 mil wet at 65 % leaves 13 mil, two coats 26 mil; the column of the foam association prints 13 mil", () => {
    const row = vector("sr-spfa-80ft2gal");
    const film = dryFilm({ ...coat, coats: 2 });
    expectPrinted(film.dryFilm.to("mil"), row.inputs.dft_printed);
    expect(film.dryBuild.toString()).toBe("26 mil");
  });

  it("takes thinner as a share of the coating, not of the mix: 60 % with a quart to the gallon is 48 %", () => {
    // 0.60 / (1 + 1/4) = 0.48
    const film = dryFilm({ wetFilm: "10 mil", volumeSolids: "60 %", thinner: "25 %", coats: 1 });
    expect([film.solids.toString(), film.dryFilm.toString()]).toEqual(["48 %", "4.8 mil"]);
  });

  it("prints the builds of MIL-HDBK-1001/5A in millimetres as that handbook does", () => {
    for (const row of [vector("film-hdbk1001-30mil"), vector("film-hdbk1001-40mil"), vector("film-hdbk1001-45mil")]) {
      // Two coats without any loss of film make what is printed.
      const { dryBuild } = dryFilm({ wetFilm: quantity("length", row.inputs.thickness as "30 mil"), volumeSolids: "50 %", coats: 2 });
      expectPrinted(dryBuild.to("mm"), row.expected.thickness_si);
    }
  });

  it("is shown in micrometres where it is given in micrometres", () => {
    expect(dryFilm({ ...coat, wetFilm: "500 um" }).dryFilm.toString()).toBe("325 um");
  });

  it("assumes no thinner, and says so", () => {
    expect(dryFilm.solve(coat).assumptions).toEqual([expect.stringContaining("thinner")]);
    expect(dryFilm.solve({ ...coat, thinner: 0 }).assumptions).toEqual([]);
  });

  it("takes solids up to 100 % and refuses nought, more, and 65 for 65 %", () => {
    const codes = (input: object): readonly unknown[] => {
      const tried = dryFilm.try({ ...coat, ...input });
      return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")]);
    };
    expect(codes({ volumeSolids: "100 %" })).toEqual([]);
    expect(codes({ volumeSolids: "0 %" })).toEqual([["tooLow", "volumeSolids"]]);
    expect(codes({ volumeSolids: "100.1 %" })).toEqual([["tooHigh", "volumeSolids"]]);
    expect(codes({ wetFilm: "20", thinner: "-1 %", coats: 0 })).toEqual([["noUnit", "wetFilm"], ["tooLow", "thinner"], ["tooLow", "coats"]]);
    const bare = dryFilm.try({ ...coat, volumeSolids: 65 });
    expect(bare.ok ? "" : bare.problems[0]?.message).toContain('did you mean "65 %"?');
  });
});
