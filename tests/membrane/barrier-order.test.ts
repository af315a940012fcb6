import { describe, expect, it } from "vitest";
import { barrierOrder } from "../../src/membrane/barrier-order.js";

const band = { length: "77 ft", bandWidth: "6 in", wetFilm: "40 mil", coats: 1 } as const;
const job = { area: "1155 ft2", wetFilm: "20 mil", coats: 2, volumeSolids: "60 %", lossShare: "10 %", packVolume: "5 gal", bands: [band], bandsFrom: "field packs" } as const;

const problemsOf = (input: unknown): readonly string[] => {
  const tried = barrierOrder.try(input);
  return tried.ok ? [] : tried.problems.map(({ code, path }) => `${code} ${path.join(".")}`);
};

describe("barrierOrder", () => {
  it("buys bands from the field packs with one round-up", () => {
    // field 1155 x 144 x 0.040 / 231 = 28.8 gal; band 77 x 12 x 6 x 0.040 / 231 = 0.96 gal; 29.76 / 0.9 = 33.07 gal: 7 packs
    const { field, fieldVolume, bandVolume, ...rest } = barrierOrder(job);
    expect([fieldVolume, bandVolume, field.net, field.packs].map(String)).toEqual(["28.8 gal", "0.96 gal", "29.76 gal", "7"]);
    expect(field.toOrder.to("gal").toFixed(4)).toBe("33.0667");
    expect(rest).not.toHaveProperty("bands");
  });

  it("buys bands apart with a round-up of their own", () => {
    // field 28.8 / 0.9 = 32 gal: 7 packs; bands 0.96 / 0.9 = 1.0667 gal: 2 packs of 1 gal
    const { field, bands } = barrierOrder({ ...job, bandsFrom: "own packs", bandPackVolume: "1 gal" });
    expect([field.toOrder.toString(), field.packs.toString(), bands?.net.toString(), bands?.packs.toString()]).toEqual(["32 gal", "7", "0.96 gal", "2"]);
  });

  it("rounds once: what fits in the last pack takes no further one", () => {
    // 1263.28125 ft2 take 1263.28125 x 5.76 / 231 = 31.5 gal, 280-35/48 ft x 2.88 / 231 = 3.5 gal: 35 gal are 7 packs, apart 7 and 1
    const exact = { ...job, area: "1263.28125 ft2", lossShare: 0, bands: [{ length: "280-35/48 ft", bandWidth: "6 in", wetFilm: "40 mil", coats: 1 }] } as const;
    expect(barrierOrder({ ...exact, bandsFrom: "field packs" }).field.packs.toString()).toBe("7");
    const apart = barrierOrder({ ...exact, bandsFrom: "own packs", bandPackVolume: "5 gal" });
    expect([apart.field.packs.toString(), apart.bands?.packs.toString()]).toEqual(["7", "1"]);
  });

  it("tells the film of a coat, of all coats, and the test patch of a pack", () => {
    // 20 x 0.6 = 12, x 2 = 24 mil; 4.5 gal x 231 / 0.020 = 51,975 in2 = 360.9375 ft2
    const { wetFilm, dryFilm, dryBuild, packCovers } = barrierOrder(job);
    expect([wetFilm, dryFilm, dryBuild, packCovers].map(String)).toEqual(["20 mil", "12 mil", "24 mil", "360.9375 ft2"]);
  });

  it("lets the texture take up the first coat alone, in volume and test patch", () => {
    // 5 mil more on 1155 ft2 are 3.6 gal; a pack covers 4.5 x 231 / 0.025 = 41,580 in2 = 288.75 ft2
    const { fieldVolume, packCovers } = barrierOrder({ ...job, firstCoatTexture: "5 mil" });
    expect([fieldVolume.toString(), packCovers.toString()]).toEqual(["32.4 gal", "288.75 ft2"]);
  });

  it("takes waste on top as well", () => {
    const { lossShare, ...rest } = job;
    expect(lossShare).toBe("10 %");
    // 29.76 x 1.25 = 37.2 gal: 8 packs; a pack covers 4 x 231 / 0.020 / 144 = 320.83 ft2
    const order = barrierOrder({ ...rest, waste: "25 %" });
    expect([order.field.toOrder.toString(), order.field.packs.toString(), order.packCovers.to("ft2").toFixed(2)]).toEqual(["37.2 gal", "8", "320.83"]);
  });

  it("says that no bands are counted where none are given, and that the coating is unthinned", () => {
    const { assumptions, answers } = barrierOrder.solve({ ...job, bands: [] });
    expect(assumptions.join(" ")).toContain("no detail bands");
    expect(assumptions.join(" ")).toContain("unthinned");
    expect(answers).not.toHaveProperty("bandVolume");
  });
});

describe("barrierOrder refuses", () => {
  it("both allowances, and none", () => {
    expect(problemsOf({ ...job, waste: "10 %" })).toEqual(["either allowance"]);
    expect(problemsOf({ ...job, lossShare: undefined })).toEqual(["either allowance"]);
  });

  it("bands of their own without the size of their packs, and a size that is not used", () => {
    expect(problemsOf({ ...job, bandsFrom: "own packs" })).toEqual(["missing bandPackVolume"]);
    expect(problemsOf({ ...job, bandPackVolume: "1 gal" })).toEqual(["refused bandPackVolume"]);
    expect(problemsOf({ ...job, bands: [], bandPackVolume: "1 gal" })).toEqual(["refused bandPackVolume"]);
    expect(problemsOf({ ...job, bandsFrom: undefined })).toEqual(["missing bandsFrom"]);
  });

  it("solids of nought, over 100 % and 55 for 55 %, a loss of all, and sizes of nought, all at once", () => {
    expect(problemsOf({ ...job, volumeSolids: 0 })).toEqual(["tooLow volumeSolids"]);
    expect(problemsOf({ ...job, volumeSolids: "101 %", lossShare: "100 %" })).toEqual(["tooHigh volumeSolids", "tooHigh lossShare"]);
    expect(problemsOf({ ...job, volumeSolids: 55 })).toEqual(["tooHigh volumeSolids"]);
    expect(problemsOf({ ...job, area: "0 ft2", bands: [{ ...band, length: "77" }] })).toEqual(["tooLow area", "noUnit bands.0.length"]);
  });

  it("says which allowances were given", () => {
    const order = { area: "100 ft2", wetFilm: "20 mil", coats: 2, volumeSolids: "60 %", packVolume: "5 gal", bands: [], bandsFrom: "field packs" };
    const given = (more: object): readonly string[] => {
      const tried = barrierOrder.try({ ...order, ...more });
      return tried.ok ? [] : tried.problems.map((problem) => `${problem.code} ${problem.given}`);
    };
    expect(given({})).toEqual(["either "]);
    expect(given({ waste: "5 %", lossShare: "5 %" })).toEqual(["either waste and lossShare"]);
  });
});
