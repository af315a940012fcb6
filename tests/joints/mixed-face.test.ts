import { describe, expect, it } from "vitest";
import { coursedFace } from "../../src/joints/coursed-face.js";
import { mixedFace } from "../../src/joints/mixed-face.js";
import { faults } from "../support/faults.js";
import { expectPrinted } from "../support/vectors.js";

const large = { unitLength: "15-5/8 in", unitHeight: "7-5/8 in", share: "60 %" } as const;
const small = { unitLength: "7-5/8 in", unitHeight: "3-5/8 in", share: "40 %" } as const;
const face = { area: "200 ft2", headJoint: "3/8 in", bedJoint: "3/8 in", depth: "3/4 in" } as const;

describe("mixedFace", () => {
  it("is each size over its part of the face", () => {
    // Large: 1 - 119.140625 / 128 = 0.0692139; 120 ft2 x 0.0692139 / 16 = 0.519104 ft3.
    // Small: 1 - 27.640625 / 32 = 0.1362305; 80 ft2 x 0.1362305 / 16 = 0.681152 ft3. Together 1.200256 ft3.
    const mortar = mixedFace({ ...face, sizes: [large, small] });
    expectPrinted(mortar.volume.to("ft3"), "1.200256");
    expect(mortar.bedVolume.to("ft3").add(mortar.headVolume.to("ft3")).toString()).toBe(mortar.volume.to("ft3").toString());
    // Level joints: 120 x (3/8)/8 / 16 + 80 x (3/8)/4 / 16 = 0.3515625 + 0.46875 ft3.
    expect(mortar.bedVolume.to("ft3").toString()).toBe("0.8203125");
  });

  it("is a coursed face where there is one size", () => {
    const one = mixedFace({ ...face, sizes: [{ ...large, share: "100 %" }] });
    expect(one.volume.toJSON()).toEqual(coursedFace({ ...face, unitLength: large.unitLength, unitHeight: large.unitHeight }).volume.toJSON());
  });

  it("takes thirds, which make the whole exactly, and no shares that do not", () => {
    const thirds = [large, small, large].map((size) => ({ ...size, share: "1/3" }));
    expect(mixedFace.try({ ...face, sizes: thirds }).ok).toBe(true);
    const short = mixedFace.try({ ...face, sizes: [large, { ...small, share: "39 %" }] });
    expect(faults(short)).toEqual(["refused sizes"]);
    expect(short.ok ? "" : short.problems[0]?.message).toContain("99 %");
    expect(faults(mixedFace.try({ ...face, sizes: [] }))).toEqual(["refused sizes"]);
  });

  it("names the size that is wrong", () => {
    expect(faults(mixedFace.try({ ...face, sizes: [large, { ...small, unitHeight: "0 in" }], depth: "3/4" }))).toEqual(["tooLow sizes.1.unitHeight", "noUnit depth"]);
  });
});
