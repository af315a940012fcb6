// Cleaner and its water, by hand; the trial patch as a textbook has it.
import { describe, expect, it } from "vitest";
import { cleanerOrder } from "../../src/film/cleaner-order.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

const wash = { area: "1000 ft2", applications: 2, spreadingRate: "100 ft2/gal", waterParts: 4, waste: "5 %", packVolume: "5 gal" } as const;

describe("cleanerOrder", () => {
  it("parts the mix into concentrate and water", () => {
    // 1,000 ft2 twice at 100 ft2/gal: 20 gal, one fifth of it concentrate: 4 gal, 16 gal of water; 4.2 gal with waste.
    const { mix, concentrate, water, toOrder, packs } = cleanerOrder(wash);
    expect([mix, concentrate, water, toOrder, packs].map(String)).toEqual(["20 gal", "4 gal", "16 gal", "4.2 gal", "1"]);
  });

  it("takes no water where it is used as it comes, and rounds up once", () => {
    // 20 gal and 5 %: 21 gal in pails of 5 gal, 4.2, so 5.
    const { water, packs } = cleanerOrder({ ...wash, waterParts: 0 });
    expect([water, packs].map(String)).toEqual(["0 gal", "5"]);
  });

  it("counts in metric", () => {
    // 90 m2 at 6 m2/L: 15 L, one part in ten of it 1.5 L.
    const { mix, concentrate, water, packs } = cleanerOrder({ area: "90 m2", applications: 1, spreadingRate: "6 m2/L", waterParts: 9, waste: "0 %", packVolume: "1 L" });
    expect([mix, concentrate, water, packs].map(String)).toEqual(["15 L", "1.5 L", "13.5 L", "2"]);
  });

  it("tells of the trial patch that the textbook asks for (Modern Masonry, 12.5.1)", () => {
    const { area, wait } = vector("clean-test-panel").expected;
    expect([area, wait]).toEqual(["10 to 20 ft2", "at least 1 week"]);
    expect(cleanerOrder.solve(wash).cautions.join(" ")).toContain(`${String(area)}, judged after a week`);
  });

  it("refuses parts below nought and half an application", () => {
    expect(faults(cleanerOrder.try({ ...wash, waterParts: -1, applications: 1.5 }))).toEqual(["notWhole applications", "tooLow waterParts"]);
  });
});
