import { describe, expect, it } from "vitest";
import { cornerUnits } from "../../src/layout/corner-units.js";
import { unitsForFace } from "../../src/layout/units-for-face.js";
import { faults } from "../support/faults.js";

const corners = { edgeHeight: "36 ft", longLeg: "8 in", shortLeg: "4 in", courseHeight: "4 in", waste: "5 %" } as const;

describe("cornerUnits", () => {
  it("is one unit a course over all edges", () => {
    // 36 ft / 4 in = 108; x 1.05 = 113.4 -> 114, 57 pairs.
    const order = cornerUnits(corners);
    expect([order.net, order.withWaste, order.toOrder, order.pairs].map(String)).toEqual(["108", "113.4", "114", "57"]);
  });

  it("rounds once over all edges, not corner by corner", () => {
    // Four edges of 9 ft 1 in: 27.25 courses each make 109 units together, 112 if each edge were rounded.
    expect(cornerUnits({ ...corners, edgeHeight: "36 ft 4 in", waste: 0 }).toOrder.toString()).toBe("109");
    expect(4 * cornerUnits({ ...corners, edgeHeight: "9 ft 1 in", waste: 0 }).toOrder.toNumber()).toBe(112);
  });

  it("covers 1.00 ft2 to the foot of edge with legs of 8 and 4 in, 0.75 with 6 and 3", () => {
    expect(cornerUnits({ ...corners, edgeHeight: "1 ft" }).coverBothFaces.toString()).toBe("1 ft2");
    expect(cornerUnits({ ...corners, edgeHeight: "1 ft", longLeg: "6 in", shortLeg: "3 in" }).coverBothFaces.toString()).toBe("0.75 ft2");
    expect(cornerUnits(corners).coverEachFace.toString()).toBe("18 ft2");
  });

  it("hands its cover to the flat units", () => {
    const { coverBothFaces } = cornerUnits(corners);
    const flats = unitsForFace({ area: "336 ft2", cornerCover: coverBothFaces, unitLength: "11-5/8 in", unitHeight: "3-5/8 in", waste: 0, packCount: 1 });
    expect(flats.net.toString()).toBe("900");
  });

  it("orders whole courses exactly in metric, and refuses nonsense", () => {
    // 2.1 m / 0.3 m is 7, where floats say 8 after a round-up.
    expect(cornerUnits({ edgeHeight: "2.1 m", longLeg: "200 mm", shortLeg: "100 mm", courseHeight: "0.3 m", waste: 0 }).toOrder.toString()).toBe("7");
    expect(faults(cornerUnits.try({ ...corners, edgeHeight: "0 ft", shortLeg: "0 in", waste: 5 }))).toEqual(["tooLow edgeHeight", "tooLow shortLeg", "tooHigh waste"]);
  });
});
