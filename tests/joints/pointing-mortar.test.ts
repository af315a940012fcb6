import { describe, expect, it } from "vitest";
import { pointingMortar } from "../../src/joints/pointing-mortar.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vectors } from "../support/vectors.js";

const face = { pattern: "coursed", area: "512 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", headJoint: "3/8 in", bedJoint: "3/8 in" } as const;
const job = {
  face,
  depth: { from: "unit and bed", unitThickness: "1-1/4 in", bed: "1/2 in", squeezeOut: "1 in" },
  tooling: { profile: "raked", profileDepth: "3/16 in" },
  waste: "20 %",
  bagYield: "0.5 ft3",
} as const;

describe("pointingMortar", () => {
  it("works out a coursed face by hand", () => {
    // Depth 1-1/4 + 1/2 - 1 = 3/4 in. Joint share 1 - 3 x 11.625 x 3.625 / 144 = 1 - 0.8779297 = 0.1220703.
    // 512 x 0.1220703 / 16 = 3.90625 ft3; a quarter raked out leaves 2.9296875; x 1.2 = 3.515625; / 0.5 = 7.03 bags.
    const order = pointingMortar(job);
    expect(order.depth.toString()).toBe("0.75 in");
    expect([order.filled, order.net, order.toOrder].map(String)).toEqual(["3.90625 ft3", "2.9296875 ft3", "3.515625 ft3"]);
    expect(order.bags.toString()).toBe("8");
    expect("fills" in order).toBe(false);
  });

  it("takes a measured depth, and counts the fills of a pointing bag", () => {
    const order = pointingMortar({ ...job, depth: { from: "open joints", depth: "3/4 in" }, pointingBag: "2 qt" });
    expect(order.toOrder.toString()).toBe("3.515625 ft3");
    // 3.515625 x 1728 / 115.5 in3 = 52.6
    expect(order.fills?.toString()).toBe("53");
  });

  it("tools level and upright joints each by their own width", () => {
    // Heads 1/2, beds 1/4, tool of 1/4 in radius, depth 3/4: beds lose the segment of 60 degrees, heads a half circle.
    const wide = pointingMortar({
      ...job,
      face: { ...face, headJoint: "1/2 in", bedJoint: "1/4 in" },
      depth: { from: "open joints", depth: "3/4 in" },
      tooling: { profile: "concave", toolRadius: "1/4 in" },
    });
    // Module 12.125 x 3.875. Beds: 512 ft2 x (0.25 / 3.875) = 33.032258 ft2 of joint; heads: 512 x 0.5 x 3.625 / 46.984375 = 19.751247 ft2.
    // Left: beds 3/4 x (1 - 0.0905861 x 0.0625 / (0.25 x 0.75)) -> 0.0301954 out; heads 1 - pi/8 x 0.25 / (0.5 x 0.75) -> 0.2617994 out.
    const beds = ((512 * 0.25) / 3.875 / 16) * (1 - (Math.PI / 6 - Math.sqrt(3) / 4) * 0.0625 / (0.25 * 0.75));
    const heads = ((512 * 0.5 * 3.625) / (12.125 * 3.875) / 16) * (1 - ((Math.PI / 8) * 0.25) / (0.5 * 0.75));
    expect(wide.net.toNumber("ft3")).toBeCloseTo(beds + heads, 9);
  });

  it("takes mixed sizes and irregular stone", () => {
    const depth = { from: "open joints", depth: "3/4 in" } as const;
    const mixed = pointingMortar({
      ...job,
      depth,
      tooling: { profile: "flush" },
      face: {
        pattern: "mixed", area: "200 ft2", headJoint: "3/8 in", bedJoint: "3/8 in",
        sizes: [{ unitLength: "15-5/8 in", unitHeight: "7-5/8 in", share: "60 %" }, { unitLength: "7-5/8 in", unitHeight: "3-5/8 in", share: "40 %" }],
      },
    });
    expectPrinted(mixed.net.to("ft3"), "1.200256"); // by hand in mixed-face.test.ts
    // 1,000 ft x 1/2 x 3/4 in: 12000 x 0.375 = 4500 in3, a quarter raked out: 3375 in3 = 1.953125 ft3.
    const irregular = pointingMortar({ ...job, depth, face: { pattern: "irregular", length: "1000 ft", width: "1/2 in" } });
    expect(irregular.net.toString()).toBe("1.953125 ft3");
  });

  it("orders exact bags where floats and decimals order one more (rounding cases)", () => {
    const cases = [...vectors("joint-bags-"), ...vectors("dec-joint-bags-")];
    expect(cases).toHaveLength(5);
    for (const { inputs, expected } of cases) {
      const { area = "", lu = "", hu = "", w = "", d = "", waste = "", yld = "" } = inputs;
      const order = pointingMortar({
        face: { pattern: "coursed", area, unitLength: lu, unitHeight: hu, headJoint: w, bedJoint: w },
        depth: { from: "open joints", depth: d },
        tooling: { profile: "flush" },
        waste,
        bagYield: yld.replace("/bag", ""),
      });
      expectPrinted(order.bags.to(), expected.bags);
    }
  });

  it("never takes less for a deeper joint, nor more for more squeeze-out", () => {
    const net = (depth: object): number => {
      const tried = pointingMortar.try({ ...job, depth });
      return tried.ok ? tried.solution.answers.net.toNumber("ft3") : Number.NaN;
    };
    const deeper = ["1/4 in", "1/2 in", "3/4 in", "1 in", "2 in"].map((depth) => net({ from: "open joints", depth }));
    expect([...deeper].sort((a, b) => a - b)).toEqual(deeper);
    const squeezed = ["0 in", "1/2 in", "1 in", "1-1/2 in"].map((squeezeOut) => net({ ...job.depth, squeezeOut }));
    expect([...squeezed].sort((a, b) => b - a)).toEqual(squeezed);
  });

  it("takes no depth by itself, and says where a problem lies", () => {
    expect(faults(pointingMortar.try({ ...job, depth: undefined }))).toEqual(["missing depth"]);
    expect(faults(pointingMortar.try({ ...job, depth: { from: "unit and bed", unitThickness: "1-1/4 in", bed: "1/2 in" } }))).toEqual(["missing depth.squeezeOut"]);
    expect(faults(pointingMortar.try({ ...job, depth: { ...job.depth, squeezeOut: "1-3/4 in" } }))).toEqual(["tooLow depth.depth"]);
    expect(faults(pointingMortar.try({ ...job, tooling: { profile: "raked", profileDepth: "3/4 in" } }))).toEqual(["tooLow tooling.left"]);
    expect(faults(pointingMortar.try({ ...job, tooling: { profile: "beaded" } }))).toEqual(["notAChoice tooling.profile"]);
    expect(faults(pointingMortar.try({ ...job, face: { ...face, unitHeigth: "3 in" } }))).toEqual(["unknown face.unitHeigth"]);
  });

  it("keeps every calculation it ran, in order", () => {
    expect(pointingMortar.solve(job).parts.map(({ id }) => id)).toEqual([
      "joints.pointing-depth", "joints.coursed-face", "joints.tooling-loss", "joints.tooled-joint", "joints.pointing-order",
    ]);
  });

  it("orders the same for the same wall in metric", () => {
    const order = pointingMortar({
      face: { pattern: "coursed", area: "47.566356480 m2", unitLength: "295.275 mm", unitHeight: "92.075 mm", headJoint: "9.525 mm", bedJoint: "9.525 mm" },
      depth: { from: "unit and bed", unitThickness: "31.75 mm", bed: "12.7 mm", squeezeOut: "25.4 mm" },
      tooling: { profile: "raked", profileDepth: "4.7625 mm" },
      waste: "20 %",
      bagYield: "14.158423296 L",
    });
    expect(order.net.to("ft3").toString()).toBe("2.9296875");
    expect(order.bags.toString()).toBe("8");
  });
});

