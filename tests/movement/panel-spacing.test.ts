import { describe, expect, it } from "vitest";
import { panelSpacing } from "../../src/movement/panel-spacing.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

describe("panelSpacing", () => {
  it("is 12 ft for a wall of 8 ft (NCMA TEK 10-2B, Table 1), half of it at a corner", () => {
    const { inputs, expected, note } = vector("ncma-cj-8ft");
    const { spacing, fromCorner } = panelSpacing({ height: inputs.H as "8 ft" });
    expect(spacing.toString()).toBe(expected.spacing);
    expect(note).toContain("Half the spacing at corners");
    expect(fromCorner.toString()).toBe("6 ft");
  });

  it("is 25 ft at most, from 16 ft 8 in of height on: 25/1.5 = 50/3 ft = 200 in", () => {
    const at = (height: "199.99 in" | "200 in" | "200.01 in"): [string, string | undefined] => {
      const { answers, steps } = panelSpacing.solve({ height });
      return [answers.spacing.toString(), steps.find(({ name }) => name === "spacing")?.governedBy];
    };
    expect(at("199.99 in")).toEqual(["24.99875 ft", "byHeight"]);
    expect(at("200 in")[0]).toBe("25 ft");
    expect(at("200.01 in")).toEqual(["25 ft", "mostSpacing"]);
  });

  it("refuses no height", () => {
    expect(faults(panelSpacing.try({ height: "0 ft" }))).toEqual(["tooLow height"]);
  });
});
