import { describe, expect, it } from "vitest";
import { detailBand } from "../../src/membrane/detail-band.js";

describe("detailBand", () => {
  it("77 ft of 6 in at 40 mil take 0.96 gal", () => {
    // 924 in x 6 in = 5,544 in2 = 38.5 ft2; x 0.040 in = 221.76 in3; / 231 = 0.96 gal
    const band = detailBand({ length: "77 ft", bandWidth: "6 in", wetFilm: "40 mil", coats: 1 });
    expect([band.area.toString(), band.volume.toString()]).toEqual(["38.5 ft2", "0.96 gal"]);
    expect(detailBand({ length: "77 ft", bandWidth: "6 in", wetFilm: "20 mil", coats: 2 }).volume.toString()).toBe("0.96 gal");
  });

  it("is shown in litres where it is metric: 20 m of 150 mm at 1 mm take 3 L", () => {
    expect(detailBand({ length: "20 m", bandWidth: "150 mm", wetFilm: "1 mm", coats: 1 }).volume.toString()).toBe("3 L");
  });

  it("refuses nought", () => {
    const tried = detailBand.try({ length: "0 ft", bandWidth: "0 in", wetFilm: "0 mil", coats: 0 });
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["length", "bandWidth", "wetFilm", "coats"]);
  });
});
