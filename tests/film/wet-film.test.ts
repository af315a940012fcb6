import { describe, expect, it } from "vitest";
import { wetFilm } from "../../src/film/wet-film.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

/** `"10 % of paint volume"` as `"10 %"`. */
const share = (text: string | undefined): "10 %" => (text ?? "").replace(" of paint volume", "") as "10 %";

describe("wetFilm", () => {
  it.each(vectors("thin-"))("with thinner: $id", ({ inputs, expected }) => {
    const film = wetFilm({ dryBuild: inputs.dft as "4 mil", volumeSolids: inputs.volume_solids as "50 %", thinner: share(inputs.thinner), coats: 1 });
    expectPrinted(film.solids.to("%"), expected.volume_solids_thinned);
    expectPrinted(film.wetFilm.to("mil"), expected.wft);
  });

  it.each(vectors("grid-vs"))("by GNU Units: $id", ({ inputs, expected }) => {
    const film = wetFilm({ dryBuild: inputs.dft as "1 mil", volumeSolids: inputs.volume_solids as "100 %", coats: 1 });
    expectPrinted(film.wetFilm.to("mil"), expected.wft);
  });

  it("splits a build of 60 mil into three coats of 20 mil (MIL-HDBK-1011/1)", () => {
    const row = vector("film-multicoat-60");
    const coats = Number(row.expected.coats);
    const film = wetFilm({ dryBuild: row.inputs.total as "60 mil", volumeSolids: "100 %", coats });
    expectPrinted(film.wetFilm.to("mil"), row.inputs.per_coat);
  });

  it("grows with the thinner and shrinks with the solids", () => {
    const at = (volumeSolids: "50 %" | "60 %", thinner: "0 %" | "10 %"): string => wetFilm({ dryBuild: "24 mil", volumeSolids, thinner, coats: 2 }).wetFilm.toString();
    // 12 / 0.6, 12 / 0.5, 12 x 1.1 / 0.6
    expect([at("60 %", "0 %"), at("50 %", "0 %"), at("60 %", "10 %")]).toEqual(["20 mil", "24 mil", "22 mil"]);
  });

  it("refuses solids of nought or over 100 %, a build of nought, and thinner as much as the coating", () => {
    const tried = wetFilm.try({ dryBuild: "0 mil", volumeSolids: 0, thinner: "100 %", coats: 1 });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")])).toEqual([["tooLow", "dryBuild"], ["tooLow", "volumeSolids"], ["tooHigh", "thinner"]]);
    expect(wetFilm.try({ dryBuild: "24 mil", volumeSolids: 1.01, coats: 1 }).ok).toBe(false);
  });
});
