import { describe, expect, it } from "vitest";
import { coatingPacks } from "../../src/film/coating-packs.js";

describe("coatingPacks", () => {
  it("43.2 gal with a tenth lost is 48 gal: 10 packs of 5 gal", () => {
    const order = coatingPacks({ net: "43.2 gal", lossShare: "10 %", packVolume: "5 gal" });
    expect([order.toOrder.toString(), order.packs.toString()]).toEqual(["48 gal", "10"]);
  });

  it("takes no pack more where it comes out whole, and one more for the least above", () => {
    // 45 x 1.1 = 49.5 gal are 11 packs of 4.5 gal
    expect(coatingPacks({ net: "45 gal", waste: "10 %", packVolume: "4.5 gal" }).packs.toString()).toBe("11");
    expect(coatingPacks({ net: "45.0001 gal", waste: "10 %", packVolume: "4.5 gal" }).packs.toString()).toBe("12");
  });

  it("wants exactly one of waste and lossShare, and refuses a loss of all", () => {
    expect(coatingPacks.try({ net: "45 gal", packVolume: "5 gal" })).toMatchObject({ ok: false, problems: [{ code: "either", path: ["allowance"] }] });
    expect(coatingPacks.try({ net: "45 gal", lossShare: 1, packVolume: "5 gal" })).toMatchObject({ ok: false, problems: [{ code: "tooHigh", path: ["lossShare"] }] });
  });
});
