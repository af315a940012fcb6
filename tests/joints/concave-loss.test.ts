import { describe, expect, it } from "vitest";
import { concaveLoss } from "../../src/joints/concave-loss.js";
import { faults } from "../support/faults.js";
import { expectPrinted } from "../support/vectors.js";

const half = { width: "3/8 in", toolRadius: "3/16 in" } as const;

describe("concaveLoss", () => {
  it("is a half circle where the tool is as wide as the joint", () => {
    // pi w^2 / 8 = 0.0552233 in2. Of a joint d deep it is pi w / (8 d): 0.147262 / d, so 4.1 % at 3-5/8 in, 20 % at 3/4 in,
    // 39 % at 3/8 in.
    const brick = concaveLoss({ ...half, depth: "3-5/8 in" });
    expect(brick.removed.to("in2").toFixed(7)).toBe("0.0552233");
    expectPrinted(brick.share.to("%"), "4.1");
    expectPrinted(concaveLoss({ ...half, depth: "3/4 in" }).share.to("%"), "20");
    expectPrinted(concaveLoss({ ...half, depth: "3/8 in" }).share.to("%"), "39");
    expect(brick.left.to("in").toString()).toBe("3.4375");
  });

  it("is the segment of a larger circle: r = w is the segment of 60 degrees", () => {
    // r^2 (pi/6 - sqrt(3)/4): with r = 1 in 0.5235988 - 0.4330127 = 0.0905861 in2, its depth 1 - sqrt(3)/2 = 0.1339746 in.
    const segment = concaveLoss({ width: "1 in", toolRadius: "1 in", depth: "1 in" });
    expect(segment.removed.to("in2").toFixed(7)).toBe("0.0905861");
    expect(segment.left.to("in").toFixed(7)).toBe("0.8660254");
  });

  it("agrees with the area under the circle, summed strip by strip", () => {
    const [w, r, strips] = [0.375, 0.25, 20_000];
    const strip = (x: number): number => Math.sqrt(r * r - x * x) - Math.sqrt(r * r - (w * w) / 4);
    const area = Array.from({ length: strips }, (_, index) => (strip(-w / 2 + ((index + 0.5) * w) / strips) * w) / strips).reduce((a, b) => a + b);
    expect(concaveLoss({ width: "3/8 in", toolRadius: "1/4 in", depth: "3/4 in" }).removed.toNumber("in2")).toBeCloseTo(area, 8);
  });

  it("takes less out with a larger tool, and next to nothing with a flat one", () => {
    const removed = (["3/16 in", "1/4 in", "1/2 in", "3 in", "40 in"] as const).map((toolRadius) => concaveLoss({ ...half, toolRadius, depth: "3/4 in" }).removed.toNumber("in2"));
    expect([...removed].sort((a, b) => b - a)).toEqual(removed);
    expect(removed.at(-1)).toBeLessThan(0.0002);
  });

  it("refuses a tool too small to reach both edges, and a joint shallower than the tool", () => {
    expect(faults(concaveLoss.try({ ...half, toolRadius: "0.187 in", depth: "3/4 in" }))).toEqual(["tooLow spare"]);
    expect(faults(concaveLoss.try({ ...half, depth: "3/16 in" }))).toEqual(["tooLow left"]);
    expect(concaveLoss.try({ ...half, depth: "1/5 in" }).ok).toBe(true);
  });
});
