import { describe, expect, it } from "vitest";
import { movementSpacing } from "../../src/movement/movement-spacing.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

/** The width in sixteenths of an inch, or what is wrong. */
const sixteenths = (input: object): number | string => {
  const tried = movementSpacing.try({ temperatureRange: "100 degF", ...input });
  return tried.ok ? tried.solution.answers.width.to("in").mul(16).toNumber() : faults(tried).join(", ");
};

describe("movementSpacing", () => {
  it("as of 2025: 3/8 in at 8 ft, 1/2 in at 12 ft, and no further (tile contractors' page on EJ171)", () => {
    const { expected } = vector("ej171-8ft-38");
    expect(expected).toEqual({ "8ft": "3/8 in", "12ft": "1/2 in", spacing: "8 to 12 ft each way" });
    const at = (spacing: string): number | string => sixteenths({ edition: "EJ171 as of 2025", spacing });
    expect([at("7.999 ft"), at("8 ft"), at("8.001 ft")]).toEqual([6, 6, 8]);
    expect([at("11.999 ft"), at("12 ft"), at("12.001 ft")]).toEqual([8, 8, "tooHigh spacing"]);
  });

  it("older: 3/8 in at 12 ft, 1/2 in at 16 ft (Merritt and Ricketts)", () => {
    const { expected } = vector("ej171-older-12-16");
    expect(expected).toEqual({ "12ft": "3/8 in", "16ft": "1/2 in" });
    const at = (spacing: string): number | string => sixteenths({ edition: "EJ171, older text", spacing, movement: "0.05 in" });
    expect([at("11.999 ft"), at("12 ft"), at("12.001 ft")]).toEqual([6, 6, 8]);
    expect([at("15.999 ft"), at("16 ft"), at("16.001 ft")]).toEqual([8, 8, "tooHigh spacing"]);
  });

  it("older: and not less than 4 times the movement, at, under and over 3/8 in", () => {
    expect(vector("ej171-older-12-16").note).toContain("at least 4 x expected movement");
    const governed = (movement: "0.0937 in" | "0.09375 in" | "0.125 in"): [string, string] => {
      const { width, governedBy } = movementSpacing({ edition: "EJ171, older text", spacing: "12 ft", temperatureRange: "90 degF", movement });
      return [width.to("in").toString(), governedBy];
    };
    expect([governed("0.0937 in"), governed("0.09375 in")]).toEqual([["0.375", "spacing and range"], ["0.375", "spacing and range"]]);
    expect(governed("0.125 in")).toEqual(["0.5", "movement"]);
  });

  it("is 1/16 in wider at 115 degF (same page), in either edition", () => {
    const { inputs, expected } = vector("ej171-115F");
    expect(expected.extra).toBe("1/16 in");
    const temperatureRange = inputs.range as "115 F";
    expect(sixteenths({ edition: "EJ171 as of 2025", spacing: "8 ft", temperatureRange })).toBe(7);
    expect(sixteenths({ edition: "EJ171, older text", spacing: "12 ft", temperatureRange, movement: "0.01 in" })).toBe(7);
  });

  it("asks for the movement where the edition does, and not otherwise", () => {
    expect(sixteenths({ edition: "EJ171, older text", spacing: "12 ft" })).toBe("missing movement");
    expect(sixteenths({ edition: "EJ171 as of 2025", spacing: "8 ft", movement: "0.01 in" })).toBe("refused movement");
    expect(sixteenths({ edition: "EJ171, older text", spacing: "20 ft" })).toBe("missing movement, tooHigh spacing");
  });

  it("has no edition and no range of its own", () => {
    expect(faults(movementSpacing.try({ spacing: "8 ft" }))).toEqual(["missing edition", "missing temperatureRange"]);
  });

  it("says that joints in the backing run through, and calls nothing safe", () => {
    const { cautions } = movementSpacing.solve({ edition: "EJ171 as of 2025", spacing: "8 ft", temperatureRange: "100 degF" });
    expect(cautions.join(" ")).toMatch(/joint in the backing.*runs through the veneer/);
    expect(cautions.join(" ")).not.toMatch(/\b(safe|compliant|approved)\b/i);
  });
});
