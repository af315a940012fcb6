import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wallMeasures } from "../../src/shapes/wall-measures.js";

/** A polygon of corners in feet. */
const polygon = (...corners: readonly (readonly [number, number])[]): { kind: "polygon"; points: { x: string; y: string }[] } => ({
  kind: "polygon",
  points: corners.map(([x, y]) => ({ x: `${String(x)} ft`, y: `${String(y)} ft` })),
});

const edgesOf = (shape: Parameters<typeof wallMeasures>[0]): readonly string[] =>
  wallMeasures(shape).edges.map(({ name, from, to, length }) => `${name} (${[from.x, from.y, to.x, to.y].map((at) => at.to("ft").toString()).join(" ")}) ${length.to("ft").toString()}`);

const problemsOf = (shape: unknown): readonly string[] => {
  const tried = wallMeasures.try(shape);
  return tried.ok ? [] : tried.problems.map(({ code, path, message }) => `${code} ${path.join(".")} ${message}`);
};

describe("wallMeasures", () => {
  it("rectangle: 4 edges, counter-clockwise from the lower left", () => {
    const wall = wallMeasures({ kind: "rectangle", width: "32 ft", height: "9 ft" });
    expect([wall.area, wall.perimeter, wall.width, wall.height].map(String)).toEqual(["288 ft2", "82 ft", "32 ft", "9 ft"]);
    expect(edgesOf({ kind: "rectangle", width: "32 ft", height: "9 ft" })).toEqual(["base (0 0 32 0) 32", "right (32 0 32 9) 9", "top (32 9 0 9) 32", "left (0 9 0 0) 9"]);
  });

  it("gable: a base and two rakes", () => {
    const wall = wallMeasures({ kind: "gable", width: "24 ft", height: "5 ft" });
    expect([wall.area, wall.perimeter, wall.width, wall.height].map(String)).toEqual(["60 ft2", "50 ft", "24 ft", "5 ft"]);
    expect(edgesOf({ kind: "gable", width: "24 ft", height: "5 ft" })).toEqual(["base (0 0 24 0) 24", "right rake (24 0 12 5) 13", "left rake (12 5 0 0) 13"]);
  });

  it("trapezoid: a side without height is no edge", () => {
    const wall = wallMeasures({ kind: "trapezoid", width: "12 ft", leftHeight: "8 ft", rightHeight: "13 ft" });
    expect([wall.area, wall.perimeter, wall.width, wall.height].map(String)).toEqual(["126 ft2", "46 ft", "12 ft", "13 ft"]);
    expect(edgesOf({ kind: "trapezoid", width: "4 ft", leftHeight: "0 ft", rightHeight: "3 ft" })).toEqual(["base (0 0 4 0) 4", "right (4 0 4 3) 3", "top (4 3 0 0) 5"]);
  });

  it("segment: a base and a curved top with its rise", () => {
    // On a circle of 5 ft: area 25 asin 0.8 - 12, arc 10 asin 0.8
    const wall = wallMeasures({ kind: "segment", width: "8 ft", rise: "2 ft" });
    expect(wall.area.toNumber("ft2")).toBeCloseTo(25 * Math.asin(0.8) - 12, 12);
    expect(wall.edges.map(({ name, rise }) => [name, rise?.toString()])).toEqual([["base", undefined], ["top", "2 ft"]]);
    expect(wall.edges[1]?.length.toNumber("ft")).toBeCloseTo(10 * Math.asin(0.8), 12);
    expect([wall.width, wall.height].map(String)).toEqual(["8 ft", "2 ft"]);
  });

  it("polygon: an L of 10 by 8 ft with 4 by 3 ft out of a corner has 68 ft2 and 36 ft round it", () => {
    const corners = [[0, 0], [10, 0], [10, 5], [6, 5], [6, 8], [0, 8]] as const;
    for (const order of [corners, [...corners].reverse()]) {
      const wall = wallMeasures(polygon(...order));
      expect([wall.area, wall.perimeter, wall.width, wall.height].map(String)).toEqual(["68 ft2", "36 ft", "10 ft", "8 ft"]);
      expect(wall.edges.map(({ name }) => name)).toEqual(["edge 1", "edge 2", "edge 3", "edge 4", "edge 5", "edge 6"]);
    }
  });

  it("polygon: stays the same wherever it stands, also below the level from which heights are measured", () => {
    const wall = wallMeasures(polygon([-3, -7], [9, -7], [9, 1], [-3, -4]));
    // 12 ft wide with sides of 3 and 8 ft: 12 x 11 / 2 = 66 ft2; top sqrt(144 + 25) = 13; round 12 + 8 + 13 + 3 = 36 ft
    expect([wall.area, wall.perimeter, wall.width, wall.height].map(String)).toEqual(["66 ft2", "36 ft", "12 ft", "8 ft"]);
  });

  it("polygon: reaches from its outermost corners, each of them alone there", () => {
    const triangle = wallMeasures(polygon([0, 0], [10, 2], [4, 9]));
    // Half of 10 x 9 - 2 x 4.
    expect([triangle.area, triangle.width, triangle.height].map(String)).toEqual(["41 ft2", "10 ft", "9 ft"]);
  });

  it("polygon: takes a corner in the box round another edge, where it is not on it", () => {
    expect(problemsOf(polygon([0, 0], [10, 10], [10, 14], [-2, 14], [1, 5], [-2, 5]))).toEqual([]);
  });

  it("polygon: keeps corners that lie on an edge", () => {
    expect(wallMeasures(polygon([0, 0], [4, 0], [10, 0], [10, 8], [0, 8])).area.toString()).toBe("80 ft2");
  });

  it("polygon: has the area of the shoelace formula over whole feet (random convex outlines)", () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 99 }), { minLength: 2, maxLength: 8 }), fc.integer({ min: -50, max: 50 }), (xs, shift) => {
        // Corners on a parabola make a convex outline, whatever they are.
        const corners = [0, ...xs].sort((a, b) => a - b).map((x) => [x + shift, x * x - shift] as const);
        const doubled = corners.reduce((total, [x, y], index) => {
          const [nextX, nextY] = corners[(index + 1) % corners.length] ?? [0, 0];
          return total + x * nextY - nextX * y;
        }, 0);
        expect(wallMeasures(polygon(...corners)).area.to("ft2").times(2).toString()).toBe(String(doubled));
      }),
      { numRuns: 60 },
    );
  });

  it("is the same wall in millimetres", () => {
    const [feet, metric] = [wallMeasures({ kind: "gable", width: "20 ft", height: "6 ft" }), wallMeasures({ kind: "gable", width: "6096 mm", height: "1828.8 mm" })];
    expect(metric.area.to("m2").toString()).toBe(feet.area.to("m2").toString());
    expect(metric.perimeter.unit).toBe("m");
  });

  it("takes back a shape it has read, and shows its parts", () => {
    const solution = wallMeasures.solve(polygon([0, 0], [10, 0], [10, 8]));
    expect(solution.parts.map(({ id }) => id)).toEqual(["shapes.polygon-edge", "shapes.polygon-edge", "shapes.polygon-edge"]);
    const { from } = solution.answers.edges[1] ?? {};
    expect(wallMeasures({ kind: "polygon", points: solution.answers.edges.map((edge) => edge.from) }).area.toString()).toBe("40 ft2");
    expect(from?.x.toString()).toBe("10 ft");
  });
});

describe("wallMeasures refuses", () => {
  it("fewer than 3 corners, and more than 100", () => {
    const corner = { x: "0 ft", y: "0 ft" };
    expect(problemsOf({ kind: "polygon", points: [] })[0]).toContain("a list of 0: write a list of 3 to 100 corners");
    expect(problemsOf({ kind: "polygon", points: [corner, { x: "1 ft", y: "0 ft" }] })[0]).toMatch(/^refused points /);
    expect(problemsOf({ kind: "polygon", points: Array.from({ length: 101 }, () => corner) })[0]).toContain("a list of 101");
    const many = Array.from({ length: 100 }, (_, x) => [x, x * x] as const);
    expect(problemsOf(polygon(...many))).toEqual([]);
  });

  it("an outline that crosses or touches itself", () => {
    expect(problemsOf(polygon([0, 0], [10, 8], [10, 0], [0, 8]))[0]).toContain("the edge from corner 1 to 2 meets the edge from corner 3 to 4");
    expect(problemsOf(polygon([0, 0], [10, 0], [10, 8], [5, 0], [0, 8]))[0]).toContain("the edge from corner 1 to 2 meets the edge from corner 3 to 4");
    expect(problemsOf(polygon([0, 0], [8, 0], [8, 5], [10, 5], [10, 0], [4, 0], [4, 9]))[0]).toContain("the edge from corner 1 to 2 meets");
  });

  it("an outline that runs back over itself, or has no area", () => {
    expect(problemsOf(polygon([0, 0], [10, 0], [6, 0], [6, 8]))[0]).toContain("the edge from corner 2 to 3 runs back over the one before it");
    expect(problemsOf(polygon([0, 0], [10, 8], [20, 16]))[0]).toContain("the corners lie on one line");
    expect(problemsOf(polygon([2, 2], [2, 2], [2, 2]))[0]).toContain("the corners lie on one line");
  });

  it("an outline that is none, without telling how many corners it has", () => {
    const crossed = wallMeasures.try(polygon([0, 0], [10, 8], [10, 0], [0, 8]));
    expect(crossed.ok ? undefined : crossed.problems[0]?.given).toBe("");
  });

  it("a corner given twice, as where the first is given again at the end", () => {
    expect(problemsOf(polygon([0, 0], [10, 0], [10, 8], [0, 0]))[0]).toContain("the edge from corner 4 to 1 has no length; give each corner once");
  });

  it("sizes without unit, of nought, of another dimension, and misspelt keys, all at once", () => {
    expect(problemsOf({ kind: "rectangle", width: "32", height: "0 ft" }).map((text) => text.split(" ").slice(0, 2).join(" "))).toEqual(["noUnit width", "tooLow height"]);
    expect(problemsOf({ kind: "gable", width: "24 ft2", hieght: "5 ft" }).map((text) => text.split(" ").slice(0, 2).join(" "))).toEqual(["wrongDimension width", "missing height", "unknown hieght"]);
    expect(problemsOf({ kind: "polygon", points: [{ x: "0 ft", y: "0" }, { x: "1 ft", y: "0 ft" }, { x: "1 ft", y: "1 ft" }] })[0]).toMatch(/^noUnit points\.0\.y /);
  });

  it("a kind that is none, with the kinds there are", () => {
    expect(problemsOf({ kind: "oval", width: "3 ft" })[0]).toContain('notAChoice kind kind: "oval" is not offered; write one of rectangle, gable, trapezoid, segment, polygon');
    expect(problemsOf({ width: "3 ft" })[0]).toMatch(/^missing kind /);
    expect(problemsOf("a wall")[0]).toMatch(/^wrongKind /);
  });
});
