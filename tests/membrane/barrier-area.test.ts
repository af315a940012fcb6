import { describe, expect, it } from "vitest";
import { barrierArea } from "../../src/membrane/barrier-area.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

const walls = [
  { shape: { kind: "rectangle", width: "40 ft", height: "9 ft" } },
  { shape: { kind: "gable", width: "24 ft", height: "5 ft" } },
] as const;
const window = { kind: "rectangle", width: "3 ft", height: "4 ft" } as const;

const problemsOf = (job: unknown): readonly string[] => {
  const tried = barrierArea.try(job);
  return tried.ok ? [] : tried.problems.map(({ code, path }) => `${code} ${path.join(".")}`);
};

describe("barrierArea", () => {
  it("adds walls and returns and takes off the openings", () => {
    // walls 360 + 60 = 420; openings 4 x 12 = 48; returns 4 x 14 ft x 0.5 ft = 28; corner 9 x 1 = 9; 420 - 48 + 28 + 9 = 409
    const barrier = barrierArea({
      walls,
      openings: [{ shape: window, count: 4, returnDepth: "6 in" }],
      deductFrom: "0 ft2",
      edges: [{ edge: "corner", length: "9 ft", depth: "1 ft" }],
    });
    const { gross, deducted, openingReturns, edgeReturns, returns, face, net } = barrier;
    expect([gross, deducted, openingReturns, edgeReturns, returns, face, net].map(String)).toEqual(["420 ft2", "48 ft2", "28 ft2", "9 ft2", "37 ft2", "372 ft2", "409 ft2"]);
  });

  it("takes walls, corners and parapets that are alike by their number", () => {
    // 2 x 60 + 3 x 9 x 1 + 2 x 20 x 1.5 = 120 + 27 + 60
    const barrier = barrierArea({
      walls: [{ shape: walls[1].shape, count: 2 }],
      openings: [],
      deductFrom: "0 ft2",
      edges: [{ edge: "corner", length: "9 ft", depth: "1 ft", count: "3" }, { edge: "parapet", length: "20 ft", depth: "18 in", count: 2 }],
    });
    expect([barrier.gross, barrier.edgeReturns, barrier.net].map(String)).toEqual(["120 ft2", "87 ft2", "207 ft2"]);
  });

  it("turns in to a depth of its own at sill, jambs and head", () => {
    // sill 3 x 0.5 = 1.5; jambs 8 x 0.25 = 2; head none: 3.5 ft2
    const returnDepths = { sill: "6 in", jambs: "3 in", head: "0 in" };
    expect(barrierArea({ walls, openings: [{ shape: window, returnDepths }], deductFrom: "0 ft2" }).returns.toString()).toBe("3.5 ft2");
  });

  it("turns in all round arched and round openings", () => {
    // half circle over 3 ft by 4 ft: (3 + 8 + 1.5 pi) / 2 ft2; round of 2 ft: 2 pi / 2 ft2
    const { openingReturns, deducted } = barrierArea({
      walls,
      openings: [{ shape: { kind: "arched", width: "3 ft", height: "4 ft", rise: "1.5 ft" }, returnDepth: "6 in" }, { shape: { kind: "round", diameter: "2 ft" }, returnDepth: "6 in" }],
      deductFrom: "0 ft2",
    });
    expect(openingReturns.toNumber("ft2")).toBeCloseTo(5.5 + 0.75 * Math.PI + Math.PI, 12);
    expect(deducted.toNumber("ft2")).toBeCloseTo(12 + 1.125 * Math.PI + Math.PI, 12);
  });

  it("deducts an opening exactly of the stated size, and none below; returns count all the same", () => {
    const at = (deductFrom: string): readonly string[] => {
      const { deducted, returns } = barrierArea({ walls, openings: [{ shape: window, returnDepth: "6 in" }], deductFrom });
      return [deducted.toString(), returns.toString()];
    };
    expect(at("12 ft2")).toEqual(["12 ft2", "7 ft2"]);
    expect(at("12.001 ft2")).toEqual(["0 ft2", "7 ft2"]);
    const kept = barrierArea.solve({ walls, openings: [{ shape: window, returnDepth: "6 in" }], deductFrom: "20 ft2" });
    expect(kept.cautions.join(" ")).toContain("Openings under 20 ft2 are not deducted");
  });

  it("deducts a window of 12 ft2 by three authorities of five, so the size is asked for", () => {
    const { expected } = vector("opening-deduction-rules");
    // "Over" a size is from the least above it; 2 ft square are 4 ft2, 0.1 m2 are 1.08 ft2.
    const sizes = { ncma_1969: "0 ft2", griffith_1916: "4.0001 ft2", masonry_structures_1921: "70.0001 ft2", ics_1905: "100 ft2", is_1200_part_3: "0.10001 m2" };
    expect(Object.keys(sizes)).toEqual(Object.keys(expected));
    const deducting = Object.entries(sizes).filter(([, deductFrom]) => barrierArea({ walls, openings: [{ shape: window, returnDepth: "0 in" }], deductFrom }).deducted.toString() === "12 ft2");
    expect(deducting.map(([name]) => name)).toEqual(["ncma_1969", "griffith_1916", "is_1200_part_3"]);
  });

  it("judges each opening by itself, not all that are alike together", () => {
    const { deducted } = barrierArea({ walls, openings: [{ shape: window, count: 4, returnDepth: "0 in" }], deductFrom: "13 ft2" });
    expect(deducted.toString()).toBe("0 ft2");
  });

  it("says that nothing is counted at edges that are not given", () => {
    expect(barrierArea.solve({ walls, openings: [], deductFrom: "0 ft2" }).assumptions).toEqual([expect.stringContaining("parapets")]);
  });

  it("is the same barrier in metric", () => {
    // 12 m x 3 m - 1.2 m2 + 2 x 0.15 x (1 + 1.2) m2 = 36 - 1.2 + 0.66
    const { net } = barrierArea({
      walls: [{ shape: { kind: "rectangle", width: "12 m", height: "3 m" } }],
      openings: [{ shape: { kind: "rectangle", width: "1 m", height: "1200 mm" }, returnDepth: "150 mm" }],
      deductFrom: "0.1 m2",
    });
    expect(net.toString()).toBe("35.46 m2");
  });
});

describe("barrierArea refuses", () => {
  it("openings larger than the walls, together or in width", () => {
    expect(problemsOf({ walls, openings: [{ shape: window, count: 36, returnDepth: "0 in" }], deductFrom: "0 ft2" })).toEqual(["refused openings"]);
    expect(problemsOf({ walls, openings: [{ shape: window, count: 35, returnDepth: "0 in" }], deductFrom: "0 ft2" })).toEqual(["tooLow net"]);
    expect(problemsOf({ walls, openings: [{ shape: { kind: "rectangle", width: "41 ft", height: "1 ft" }, returnDepth: "0 in" }], deductFrom: "0 ft2" })).toEqual(["refused openings.0.shape"]);
  });

  it("to guess what is deducted, what is turned in, or whether there are openings", () => {
    expect(problemsOf({ walls, openings: [] })).toEqual(["missing deductFrom"]);
    expect(problemsOf({ walls, deductFrom: "0 ft2" })).toEqual(["missing openings"]);
    expect(problemsOf({ walls, openings: [{ shape: window }], deductFrom: "0 ft2" })).toEqual(["either openings.0"]);
    expect(problemsOf({ walls, openings: [{ shape: window, returnDepth: "4 in", returnDepths: { sill: "4 in", jambs: "4 in", head: "4 in" } }], deductFrom: "0 ft2" })).toEqual(["either openings.0"]);
    expect(problemsOf({ walls, openings: [{ shape: window, returnDepths: { sill: "4 in", jambs: "4 in" } }], deductFrom: "0 ft2" })).toEqual(["missing openings.0.returnDepths.head"]);
  });

  it("sides of a round opening, which has none", () => {
    const round = { shape: { kind: "round", diameter: "2 ft" }, returnDepths: { sill: "4 in", jambs: "4 in", head: "4 in" } };
    expect(problemsOf({ walls, openings: [round], deductFrom: "0 ft2" })).toEqual(["refused openings.0.returnDepths"]);
  });

  it("no walls, half an opening, and shapes that are none, with all that is wrong at once", () => {
    expect(problemsOf({ walls: [], openings: [], deductFrom: "0 ft2" })).toEqual(["refused walls"]);
    expect(problemsOf({ walls, openings: [{ shape: window, count: 2.5, returnDepth: "4 in" }], deductFrom: "0" })).toEqual(["refused openings.0.count", "noUnit deductFrom"]);
    expect(problemsOf({ walls: [{ shape: { kind: "rectangle", width: "40", height: "9 ft" } }], openings: [{ shape: { kind: "oval" } }], deductFrom: "0 ft2", egdes: [] })).toEqual([
      "noUnit walls.0.shape.width", "notAChoice openings.0.shape.kind", "unknown egdes",
    ]);
  });

  it("an arch higher than a half circle, and names the place", () => {
    const arched = { shape: { kind: "arched", width: "3 ft", height: "4 ft", rise: "2 ft" }, returnDepth: "4 in" };
    expect(problemsOf({ walls, openings: [arched], deductFrom: "0 ft2" })).toEqual(["tooHigh openings.0.shape.riseShare"]);
  });

  it("an opening wider than the widest wall, whichever that is, and none as wide", () => {
    const rectangle = (width: string): object => ({ shape: { kind: "rectangle", width, height: "8 ft" } });
    const job = (width: string): object => ({ walls: ["24 ft", "40 ft", "10 ft"].map(rectangle), openings: [{ shape: { kind: "rectangle", width, height: "1 ft" }, returnDepth: "0 in" }], deductFrom: "0 ft2" });
    expect(barrierArea.try(job("40 ft")).ok).toBe(true);
    expect(faults(barrierArea.try(job("40.01 ft")))).toEqual(["refused openings.0.shape"]);
  });

  it("two depths for one opening, and says which were given; none is none", () => {
    const opening = { shape: { kind: "rectangle", width: "3 ft", height: "4 ft" } };
    const job = (more: object): object => ({ walls: [{ shape: { kind: "rectangle", width: "40 ft", height: "8 ft" } }], openings: [{ ...opening, ...more }], deductFrom: "0 ft2" });
    const told = (more: object): readonly string[] => {
      const tried = barrierArea.try(job(more));
      return tried.ok ? [] : tried.problems.map(({ code, given }) => `${code} ${given}`);
    };
    expect(told({})).toEqual(["either "]);
    expect(told({ returnDepth: "1 in", returnDepths: { sill: "1 in", jambs: "1 in", head: "1 in" } })).toEqual(["either returnDepth and returnDepths"]);
  });

  it("a wall of no height, by its place", () => {
    const flat = { shape: { kind: "trapezoid", width: "9 ft", leftHeight: "0 ft", rightHeight: "0 ft" } };
    const tried = barrierArea.try({ walls: [{ shape: { kind: "rectangle", width: "40 ft", height: "8 ft" } }, flat], openings: [], deductFrom: "0 ft2" });
    expect(faults(tried).map((fault) => fault.slice(0, fault.lastIndexOf(".")))).toEqual(["tooLow walls.1.shape"]);
  });

  it("nothing where all is deducted and every edge is told: no caution on openings, no assumption on edges", () => {
    const whole = barrierArea.solve({
      walls: [{ shape: { kind: "rectangle", width: "40 ft", height: "8 ft" } }], deductFrom: "12 ft2",
      openings: [{ shape: { kind: "rectangle", width: "3 ft", height: "4 ft" }, returnDepth: "1 in" }], edges: [{ edge: "corner", length: "8 ft", depth: "1 ft" }],
    });
    expect(whole.cautions.join(" ")).not.toContain("not deducted");
    expect(whole.assumptions).toEqual([]);
  });
});
