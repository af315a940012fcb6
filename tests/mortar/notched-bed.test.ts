import { describe, expect, it } from "vitest";
import { notchedBed } from "../../src/mortar/notched-bed.js";
import { squareNotchBed } from "../../src/mortar/square-notch-bed.js";
import { uNotchBed } from "../../src/mortar/u-notch-bed.js";
import { vNotchBed } from "../../src/mortar/v-notch-bed.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

const quarter = { depth: "1/4 in", width: "1/4 in", tooth: "1/4 in" } as const;
const half = { depth: "1/2 in", width: "1/2 in", tooth: "1/2 in" } as const;

describe("squareNotchBed", () => {
  it("leaves half the depth where tooth and notch are alike and the trowel is held square", () => {
    // 1/4 x 1/4 / (1/4 + 1/4) = 1/8
    const { ridge, pitch, upright } = squareNotchBed({ ...quarter, angle: "90 deg" });
    expect([ridge, pitch, upright].map(String)).toEqual(["0.0625 in2", "0.5 in", "0.125 in"]);
  });

  it("tells depth, width and tooth apart", () => {
    // 1/4 deep, 3/8 wide, 1/8 between: 3/32 in2 on each 1/2 in, 3/16 in.
    const { ridge, pitch, upright } = squareNotchBed({ depth: "1/4 in", width: "3/8 in", tooth: "1/8 in", angle: "90 deg" });
    expect([ridge, pitch, upright].map(String)).toEqual(["0.09375 in2", "0.5 in", "0.1875 in"]);
  });

  it("leaves less where the trowel is held lower, by the sine of its angle", () => {
    // sin 45 deg = 0.70710678: 1/8 x 0.7071 = 0.088 in; sin 30 deg = 1/2.
    expectPrinted(squareNotchBed({ ...quarter, angle: "45 deg" }).bed.to("in"), "0.088");
    expect(squareNotchBed({ ...quarter, angle: "30 deg" }).bed.to("in").toFixed(20)).toBe("0.06250000000000000000");
    expect(squareNotchBed({ ...quarter, angle: "90 deg" }).bed.to("in").toFixed(20)).toBe("0.12500000000000000000");
  });

  it("leaves more with a narrower tooth", () => {
    // 1/2 x 1/2 / (1/2 + 1/4) = 1/3
    expect(squareNotchBed({ ...half, tooth: "1/4 in", angle: "90 deg" }).upright.to("in").toFixed(6)).toBe("0.333333");
  });

  it("takes 30 to 90 degrees and no other angle, and no notch without a tooth", () => {
    expect(squareNotchBed.try({ ...quarter, angle: "30 deg" }).ok).toBe(true);
    expect(faults(squareNotchBed.try({ ...quarter, angle: "29.9 deg" }))).toEqual(["tooLow angle"]);
    expect(faults(squareNotchBed.try({ ...quarter, angle: "90.1 deg" }))).toEqual(["tooHigh angle"]);
    expect(faults(squareNotchBed.try({ ...quarter, angle: 90 }))).toEqual(["noUnit angle"]);
    expect(faults(squareNotchBed.try({ ...quarter, tooth: "0 in", angle: "90 deg" }))).toEqual(["tooLow tooth"]);
  });
});

describe("uNotchBed", () => {
  it("is a rectangle over a half circle", () => {
    // w = 1/2, d = 3/4: 1/2 x (3/4 - 1/4) + pi x 1/4 / 8 = 0.25 + 0.0981748 = 0.3481748 in2; / 1 in = 0.3482 in.
    const { straight, ridge, upright } = uNotchBed({ ...half, depth: "3/4 in", angle: "90 deg" });
    expect(straight.toString()).toBe("0.5 in");
    expect(ridge.to("in2").toFixed(6)).toBe("0.348175");
    expect(upright.to("in").toFixed(6)).toBe("0.348175");
  });

  it("leaves half where the trowel is held at 30 degrees", () => {
    expect(uNotchBed({ ...half, depth: "3/4 in", angle: "30 deg" }).bed.to("in").toFixed(6)).toBe("0.174087");
  });

  it("is a half circle alone where the notch is half as deep as wide, and no shallower", () => {
    // pi x (1/2)^2 / 8 = 0.0981748 in2
    expect(uNotchBed({ ...half, depth: "1/4 in", angle: "90 deg" }).ridge.to("in2").toFixed(6)).toBe("0.098175");
    expect(faults(uNotchBed.try({ ...half, depth: "0.249 in", angle: "90 deg" }))).toEqual(["tooLow straight"]);
  });
});

describe("vNotchBed", () => {
  it("leaves half of what square notches leave", () => {
    const { upright } = vNotchBed({ ...half, angle: "90 deg" });
    expect(upright.toString()).toBe("0.125 in");
    expect(squareNotchBed({ ...half, angle: "90 deg" }).upright.toString()).toBe("0.25 in");
  });

  it("leaves half of that where the trowel is held at 30 degrees", () => {
    expect(vNotchBed({ ...half, angle: "30 deg" }).bed.to("in").toFixed(12)).toBe("0.062500000000");
  });

  it("takes sharp teeth: half the depth over the whole pitch", () => {
    expect(vNotchBed({ depth: "3/16 in", width: "1/4 in", tooth: "0 in", angle: "90 deg" }).upright.toString()).toBe("0.09375 in");
  });
});

describe("notchedBed", () => {
  it("picks the shape", () => {
    const beds = (["square", "u", "v"] as const).map((notch) => notchedBed({ notch, ...half, angle: "90 deg" }).bed.to("in").toFixed(6));
    // u: 1/2 x 1/4 + pi / 32 = 0.125 + 0.0981748 = 0.2231748 in2 over 1 in.
    expect(beds).toEqual(["0.250000", "0.223175", "0.125000"]);
  });

  it("warns of a bed below the bond coat of ANSI A108.5, as quoted by the tile trade press", () => {
    expect(vector("ansi-thin-bed-thickness").expected.min).toBe("3/32 in");
    // 0.125 x sin 45 deg = 0.0884 in is less than 3/32 = 0.09375 in; a square 3/16 notch held upright leaves exactly 3/32.
    const low = notchedBed.solve({ notch: "square", ...quarter, angle: "45 deg" });
    expect(low.answers.thin).toBe(true);
    expect(low.cautions.join()).toContain("thinner than 3/32 in");
    const held = notchedBed.solve({ notch: "v", depth: "3/8 in", width: "1/4 in", tooth: "1/4 in", angle: "90 deg" });
    expect(held.answers.thin).toBe(false);
    expect(held.cautions.join()).not.toContain("thinner");
  });

  it("refuses a shape that is none, and passes on what its calculation refuses", () => {
    expect(faults(notchedBed.try({ notch: "round", ...half, angle: "90 deg" }))).toEqual(["notAChoice notch"]);
    expect(faults(notchedBed.try({ notch: "u", ...half, depth: "1/8 in", angle: "90 deg" }))).toEqual(["tooLow straight"]);
    expect(faults(notchedBed.try({ notch: "square", ...half }))).toEqual(["missing angle"]);
  });
});
