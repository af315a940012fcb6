import { describe, expect, it } from "vitest";
import { coatingVolume } from "../../src/film/coating-volume.js";

const job = { area: "1540 ft2", wetFilm: "20 mil", coats: 2 } as const;

describe("coatingVolume", () => {
  it("1540 ft2 at 2 x 20 mil is 38.4 gal", () => {
    // 1540 x 144 in2 x 0.040 in / 231 in3 = 38.4
    const solution = coatingVolume.solve(job);
    expect(solution.answers.net.toString()).toBe("38.4 gal");
    expect(solution.assumptions).toEqual([expect.stringContaining("firstCoatTexture")]);
  });

  it("takes the texture once, however many coats", () => {
    // 5 mil more are 4.8 gal: 1540 x 144 x 0.005 / 231
    expect(coatingVolume({ ...job, firstCoatTexture: "5 mil" }).net.toString()).toBe("43.2 gal");
    expect(coatingVolume({ ...job, coats: 4, firstCoatTexture: "5 mil" }).net.toString()).toBe("81.6 gal");
  });

  it("refuses a texture below nought and a film of nought", () => {
    const tried = coatingVolume.try({ ...job, wetFilm: "0 mil", firstCoatTexture: "-1 mil" });
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["wetFilm", "firstCoatTexture"]);
  });
});
