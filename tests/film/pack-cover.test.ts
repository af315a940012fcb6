import { describe, expect, it } from "vitest";
import { packCover } from "../../src/film/pack-cover.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("packCover", () => {
  it("5 gal at 115 ft2/gal is a test strip of 575 ft2 (FAA AC 150/5370-10G, item P-620, as quoted by a consultant newsletter)", () => {
    const row = vector("sr-faa-5gal");
    const { area } = packCover({ packVolume: row.inputs.volume as "5 gal", spreadingRate: row.expected.rate as "115 ft2/gal", waste: 0 });
    expectPrinted(area.to("ft2"), row.inputs.max_area);
    expectPrinted(area.to("m2"), row.expected.max_area_si);
  });

  it("takes off what is lost, and what goes on top, each in its own way", () => {
    // 5 x 0.9 x 80 = 360 ft2; 5 / 1.25 x 80 = 320 ft2
    expect(packCover({ packVolume: "5 gal", spreadingRate: "80 ft2/gal", lossShare: "10 %" }).area.toString()).toBe("360 ft2");
    expect(packCover({ packVolume: "5 gal", spreadingRate: "80 ft2/gal", waste: "25 %" }).area.toString()).toBe("320 ft2");
  });

  it("refuses both, neither, and a loss of all", () => {
    const pack = { packVolume: "5 gal", spreadingRate: "80 ft2/gal" };
    expect(packCover.try(pack)).toMatchObject({ ok: false, problems: [{ code: "either" }] });
    expect(packCover.try({ ...pack, waste: "10 %", lossShare: "10 %" })).toMatchObject({ ok: false, problems: [{ code: "either" }] });
    expect(packCover.try({ ...pack, lossShare: "100 %" })).toMatchObject({ ok: false, problems: [{ code: "tooHigh", path: ["lossShare"] }] });
  });
});
