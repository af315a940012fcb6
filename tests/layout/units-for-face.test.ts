import { describe, expect, it } from "vitest";
import { quantity } from "../../src/core/read-quantity.js";
import { unitsForFace } from "../../src/layout/units-for-face.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

const face = { area: "320 ft2", cornerCover: "20 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", waste: "10 %", packCount: 24 } as const;
const none = { cornerCover: "0 ft2", packCount: 1 } as const;
const brick = { unitLength: "8 in", unitHeight: "2-1/4 in", headJoint: "1/2 in", bedJoint: "1/2 in" } as const;

describe("unitsForFace", () => {
  it("counts flat units less what corners cover, rounded up once", () => {
    // (320 - 20) x 3 = 900; x 1.1 = 990; / 24 = 41.25 packs.
    const flats = unitsForFace(face);
    expect([flats.flatArea, flats.net, flats.toOrder, flats.packs].map(String)).toEqual(["300 ft2", "900", "990", "42"]);
    expect(unitsForFace({ ...face, packCount: 45 }).packs.toString()).toBe("22");
    // 301 ft2: 903 x 1.1 = 993.3 -> 994; / 24 = 41.4. The packs come from the unrounded count.
    expect(unitsForFace({ ...face, area: "321 ft2" }).toOrder.toString()).toBe("994");
  });

  it("counts the brick of the US Navy's wall (NAVEDTRA 14045), and does not round 759 to 760", () => {
    const { inputs, expected } = vector("navy-brick-wall-8x14-count");
    expect(inputs).toMatchObject({ height: "8 ft", length: "14 ft", waste: "10 %" });
    const wall = unitsForFace({ area: "112 ft2", ...none, ...brick, waste: "10 %" });
    expectPrinted(wall.net.to(), expected.net_units);
    // 689.968 x 1.1 = 758.96: the source rounds to 690 first, and 759 up to the ten.
    expect(wall.toOrder.toString()).toBe("759");
    expect(expected.ordered_units).toBe("760");
  });

  it("counts the block of the US Navy's building before and after its corners", () => {
    // 56 x 8 = 448 ft2 x 1.125 = 504; half a block a course at each of 4 corners, 24 block, cover 24 / 1.125 = 21-1/3 ft2.
    const block = { area: "448 ft2", unitLength: "15-5/8 in", unitHeight: "7-5/8 in", waste: 0, packCount: 1 } as const;
    expect(vector("navy-cmu-building-20x8x8-perimeter").expected.gross_units).toBe(unitsForFace({ ...block, cornerCover: "0 ft2" }).net.toString());
    expect(vector("navy-cmu-building-corner-deduction").expected.net_units).toBe(unitsForFace({ ...block, cornerCover: "64/3 ft2" }).net.toString());
    // A course of the basement of 22 x 32 ft: 108 ft x 8 in = 72 ft2, 81 block less half a block at each corner, 16/9 ft2.
    const course = unitsForFace({ ...block, area: "72 ft2", cornerCover: "16/9 ft2" });
    expectPrinted(course.net.to(), vector("navy-basement-22x32-course").expected.units);
  });

  it("counts the units of one course, as a marked line does (Masonry Magazine, January 1962)", () => {
    // The table's multiplier x 3/1000 is brick to the foot; it is cut off at three figures, not rounded, and its second
    // column, captioned 1/4 in, is that of 1/2 in.
    const rows = vectors("marked-line-");
    expect(rows).toHaveLength(3);
    for (const { inputs, expected } of rows) {
      const unitLength = { value: quantity("length", (inputs.length_of_10 ?? "") as "1 in").to("in").div(10), unit: "in" } as const;
      const multiplier = (headJoint: "3/8 in" | "1/2 in"): string =>
        unitsForFace({ area: "12 in2", ...none, unitLength, unitHeight: "1 in", headJoint, bedJoint: "0 in", waste: 0 }).net.to().mul(1000).div(3).floor().toString();
      expect(multiplier("3/8 in")).toBe(expected.multiplier_3_8);
      expect(multiplier("1/2 in")).toBe(expected.multiplier_second_column);
    }
  });

  it("orders exact counts where floats and decimals order one more (rounding cases)", () => {
    const cases = vectors("dec-units-per-area-");
    expect(cases).toHaveLength(2);
    for (const { inputs, expected } of cases) {
      const length = (text: string | undefined) => quantity("length", text as "1 in");
      const order = unitsForFace({
        area: quantity("area", inputs.area as "1 ft2"), ...none, unitLength: length(inputs.lu), unitHeight: length(inputs.hu),
        headJoint: length(inputs.w), bedJoint: length(inputs.w), waste: quantity("ratio", inputs.waste as "1 %"),
      });
      expectPrinted(order.toOrder.to(), expected.units);
    }
  });

  it("orders what the Dutch module asks for, where the museum counts across a single metre", () => {
    // 1 / (0.2 x 0.06) = 83.33, with 3 % 85.83; the museum counts 5 x 16.5 = 82.5 and 85.
    const row = vector("nl-module50-bricks-per-m2");
    const order = unitsForFace({ area: "1 m2", cornerCover: "0 m2", unitLength: "190 mm", unitHeight: "50 mm", headJoint: "10 mm", bedJoint: "10 mm", waste: "3 %", packCount: 1 });
    expectPrinted(order.net.to(), "83.33");
    expect(order.net.toNumber() / Number.parseFloat(row.expected.net_by_counting ?? "")).toBeCloseTo(1.0101, 4);
  });

  it("never orders less for more waste, nor more for more corner cover", () => {
    const orders = (["0 %", "3 %", "10 %", "25 %"] as const).map((waste) => unitsForFace({ ...face, waste }).toOrder.toNumber());
    expect(orders).toEqual([900, 927, 990, 1125]);
    const covers = (["0 ft2", "20 ft2", "320 ft2"] as const).map((cornerCover) => unitsForFace({ ...face, cornerCover }).toOrder.toNumber());
    expect(covers).toEqual([1056, 990, 0]);
  });

  it("asks what corners cover, and refuses more than the face", () => {
    expect(faults(unitsForFace.try({ ...face, cornerCover: undefined }))).toEqual(["missing cornerCover"]);
    expect(faults(unitsForFace.try({ ...face, cornerCover: "320.1 ft2" }))).toEqual(["tooLow flatArea"]);
    expect(faults(unitsForFace.try({ ...face, packCount: 0 }))).toEqual(["tooLow packCount"]);
  });
});
