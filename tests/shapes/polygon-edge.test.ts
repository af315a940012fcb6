import { describe, expect, it } from "vitest";
import { polygonEdge } from "../../src/shapes/polygon-edge.js";

describe("polygonEdge", () => {
  it("from 4 over 8 to 0 over 5 is 5 long, with 4 x (8 + 5) / 2 = 26 under it", () => {
    const edge = polygonEdge({ fromX: "4 ft", fromY: "8 ft", toX: "0 ft", toY: "5 ft" });
    expect([edge.length.toString(), edge.areaUnder.toString()]).toEqual(["5 ft", "26 ft2"]);
  });

  it("counts the area under it as negative where it runs to the right, and none under an upright", () => {
    expect(polygonEdge({ fromX: "0 ft", fromY: "5 ft", toX: "4 ft", toY: "8 ft" }).areaUnder.toString()).toBe("-26 ft2");
    expect(polygonEdge({ fromX: "4 ft", fromY: "0 ft", toX: "4 ft", toY: "8 ft" }).areaUnder.toString()).toBe("0 ft2");
  });

  it("refuses an edge without length", () => {
    const tried = polygonEdge.try({ fromX: "4 ft", fromY: "8 ft", toX: "48 in", toY: "96 in" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")])).toEqual([["tooLow", "length"]]);
  });
});
