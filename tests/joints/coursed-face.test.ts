import { describe, expect, it } from "vitest";
import { quantity } from "../../src/core/read-quantity.js";
import { coursedFace } from "../../src/joints/coursed-face.js";
import { faults } from "../support/faults.js";
import { expectPrinted, roundTo, vector, vectors } from "../support/vectors.js";

const brick = { unitLength: "8 in", unitHeight: "2-1/4 in", headJoint: "1/2 in", bedJoint: "1/2 in", depth: "3-3/4 in" } as const;
const wall = { area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" } as const;

describe("coursedFace", () => {
  it("gives the 11.7 ft3 to 1000 brick of the US Navy's Table 4-5 (NAVEDTRA 14045), the crossings counted once", () => {
    const row = vector("navy-brick-mortar-per-1000-half-inch");
    expect(row.inputs).toEqual({ unit_length: "8 in", unit_height: "2.25 in", bed_depth: "3.75 in", joint: "0.5 in" });
    // A brick and a joint each way is 8.5 x 2.75 = 23.375 in2. By hand 3.75 x (23.375 - 18) = 20.156 in3 a brick, 11.66 ft3
    // to 1000; without the crossings 11.12.
    const thousand = coursedFace({ area: "23375 in2", ...brick });
    expectPrinted(thousand.volume.to("ft3"), row.expected.mortar);
    expectPrinted(quantity("area", "1 in2").to("in2").div(thousand.unitsPerArea.to("/in2")), vector("navy-brick-face-area-half-inch").expected.area);
  });

  it("counts units to the area as printed where the print is geometry", () => {
    expectPrinted(coursedFace({ area: "1 ft2", ...brick }).unitsPerArea.to("/ft2"), vector("navy-brick-wall-8x14-count").inputs.units_per_ft2);
    const block = coursedFace({ area: "1 ft2", unitLength: "15-5/8 in", unitHeight: "7-5/8 in", depth: "1 in" });
    expectPrinted(block.unitsPerArea.to("/ft2"), vector("navy-cmu-per-sqft").expected.units);
    const quarter = vector("jlc-brick-veneer-1-4");
    expectPrinted(coursedFace({ area: "100 ft2", ...brick, headJoint: "1/4 in", bedJoint: "1/4 in" }).unitsPerArea.to("/ft2").mul(100), quarter.expected.units);
    const threeQuarters = vector("jlc-brick-veneer-3-4");
    expectPrinted(coursedFace({ area: "100 ft2", ...brick, headJoint: "3/4 in", bedJoint: "3/4 in" }).unitsPerArea.to("/ft2").mul(100), threeQuarters.expected.units);
    // 1 / (0.225 x 0.075) = 59.26 to the square metre, which the United Kingdom rounds to 60.
    const metric = coursedFace({ area: "1 m2", unitLength: "215 mm", unitHeight: "65 mm", headJoint: "10 mm", bedJoint: "10 mm", depth: "102.5 mm" });
    expectPrinted(metric.unitsPerArea.to("/m2"), "59.26");
    expectPrinted(metric.unitsPerArea.to("/m2").ceil(), vector("uk-bricks-per-m2-half-brick").expected.units);
  });

  it("lies below the trade journal's figures, whose waste is no constant share and whose counts drift (Journal of Light Construction)", () => {
    const rows = vectors("jlc-brick-veneer-");
    expect(rows).toHaveLength(4);
    for (const { inputs, expected } of rows) {
      const joint = quantity("length", (inputs.joint ?? "") as "1 in");
      const face = coursedFace({ area: "100 ft2", ...brick, headJoint: joint, bedJoint: joint });
      const count = Number.parseFloat(expected.units ?? "") / (100 * face.unitsPerArea.toNumber("/ft2"));
      const mortar = Number.parseFloat(expected.mortar_with_waste ?? "") / face.volume.toNumber("ft3");
      expect(count).toBeGreaterThan(0.999);
      expect(count).toBeLessThan(1.032);
      expect(mortar).toBeGreaterThan(1.12);
      expect(mortar).toBeLessThan(1.285);
    }
  });

  it("takes half an inch of mortar from a brick wall that the Belgian museum's rule of 32 L/m2 nearly doubles", () => {
    // 190 x 50 face, 10 mm joints, 90 deep: 1 - 9500 / 12000 = 0.208333; x 90 mm = 18.75 L to the square metre.
    const face = coursedFace({ area: "1 m2", unitLength: "190 mm", unitHeight: "50 mm", headJoint: "10 mm", bedJoint: "10 mm", depth: "90 mm" });
    expect(face.volume.toString()).toBe("18.75 L");
    expect(vector("nl-oven-mortar-total").inputs.rate_half).toBe("32 L/m2");
  });

  it("tells level and upright joints apart, and they make the whole", () => {
    // 12 x 4 module, 3/8 joints: level (3/8) / 4 = 3/32 of the face; upright 3 / ft2 x 3/8 x 3-5/8 / 144 = 0.0283203.
    const face = coursedFace(wall);
    expect(face.unitsPerArea.toString()).toBe("3 /ft2");
    // 312 x 3/32 x 1/16 = 1.828125 ft3; 312 x 0.02832031 x 1/16 = 0.552246 ft3.
    expect(face.bedVolume.toString()).toBe("1.828125 ft3");
    expectPrinted(face.headVolume.to("ft3"), "0.552246");
    expect(face.bedVolume.to("ft3").add(face.headVolume.to("ft3")).toString()).toBe(face.volume.to("ft3").toString());
  });

  it("is the sum of the strips with the crossings taken once, for any joints", () => {
    for (const [head, bed] of [["1/4 in", "1/2 in"], ["3/8 in", "3/8 in"], ["5/8 in", "0 in"], ["0 in", "1/2 in"]] as const) {
      const face = coursedFace({ ...wall, headJoint: head, bedJoint: bed });
      const [th, tb] = [quantity("length", head).toNumber("in"), quantity("length", bed).toNumber("in")];
      // To a unit: L tb + H th + th tb, over (L + th)(H + tb).
      const share = (11.625 * tb + 3.625 * th + th * tb) / ((11.625 + th) * (3.625 + tb));
      expect(face.jointShare.to("ratio").toNumber()).toBeCloseTo(share, 12);
    }
  });

  it("takes more for a deeper or a wider joint, twice for twice the area, and nothing without joints", () => {
    const volume = (change: object): number => {
      const tried = coursedFace.try({ ...wall, ...change });
      return tried.ok ? tried.solution.answers.volume.toNumber("ft3") : Number.NaN;
    };
    expect(volume({ depth: "13/16 in" })).toBeGreaterThan(volume({}));
    expect(volume({ headJoint: "1/2 in" })).toBeGreaterThan(volume({}));
    expect(volume({ area: "624 ft2" })).toBeCloseTo(2 * volume({}), 12);
    expect(volume({ headJoint: "0 in", bedJoint: "0 in" })).toBe(0);
  });

  it("says what it took for the joints, and refuses nonsense", () => {
    expect(coursedFace.solve(wall).assumptions).toHaveLength(2);
    expect(coursedFace.solve({ ...wall, headJoint: "3/8 in", bedJoint: "3/8 in" }).assumptions).toEqual([]);
    expect(faults(coursedFace.try({ ...wall, depth: "0 in", unitLength: "0 in", headJoint: "-1/8 in" }))).toEqual(["tooLow unitLength", "tooLow headJoint", "tooLow depth"]);
    expect(faults(coursedFace.try({ ...wall, depth: "3/8" }))).toEqual(["noUnit depth"]);
  });

  it("gives the same in metric", () => {
    const face = coursedFace({ area: "28.98574848 m2", unitLength: "295.275 mm", unitHeight: "92.075 mm", headJoint: "9.525 mm", bedJoint: "9.525 mm", depth: "19.05 mm" });
    expect(roundTo(face.volume.to("ft3"), 10)).toBe(roundTo(coursedFace(wall).volume.to("ft3"), 10));
  });
});
