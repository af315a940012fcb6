// What can be and what cannot. A wall has a length and a height, a sealant takes some movement and at most its own width;
// a range of temperature, a movement or a tolerance may be nought.
import { describe, expect, it } from "vitest";
import { jointByMultiple } from "../../src/movement/joint-by-multiple.js";
import { jointForMovement } from "../../src/movement/joint-for-movement.js";
import { masonrySpacing } from "../../src/movement/masonry-spacing.js";
import { moistureMovement } from "../../src/movement/moisture-movement.js";
import { movementSpacing } from "../../src/movement/movement-spacing.js";
import { panelSpacing } from "../../src/movement/panel-spacing.js";
import { spacingForWidth } from "../../src/movement/spacing-for-width.js";
import { thermalMovementByMaterial } from "../../src/movement/thermal-movement-by-material.js";
import { thermalMovement } from "../../src/movement/thermal-movement.js";
import { unrestrainedStrain } from "../../src/movement/unrestrained-strain.js";
import { widthForRange } from "../../src/movement/width-for-range.js";
import { movementJointCheck } from "../../src/movement/movement-joint-check.js";
import { movementLayout } from "../../src/movement/movement-layout.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(jointByMultiple, { movement: "above 0 in", multiple: "from 100 %", leastWidth: "from 0 in" });
  itHoldsTheLimits(jointForMovement, { thermal: "from 0 in", moisture: "from 0 in", structural: "from 0 in", sealantCapability: "above 0 %, to 100 %", tolerance: "from 0 in" });
  itHoldsTheLimits(masonrySpacing, { height: "above 0 ft" });
  itHoldsTheLimits(moistureMovement, { length: "above 0 ft", moistureStrain: "from 0 %, below 100 %" });
  itHoldsTheLimits(movementSpacing, { spacing: "above 0 ft", temperatureRange: "from 0 degF", movement: "above 0 in" });
  itHoldsTheLimits(panelSpacing, { height: "above 0 ft" });
  itHoldsTheLimits(spacingForWidth, { width: "above 0 in", sealantCapability: "above 0 %, to 100 %", strain: "above 0 %" });
  itHoldsTheLimits(thermalMovementByMaterial, { length: "above 0 ft", temperatureRange: "from 0 degF" });
  itHoldsTheLimits(thermalMovement, { length: "above 0 ft", expansion: "above 0 /degF", temperatureRange: "from 0 degF" });
  itHoldsTheLimits(unrestrainedStrain, { moistureStrain: "from 0 %, below 100 %", expansion: "above 0 /degF", temperatureRange: "from 0 degF" });
  itHoldsTheLimits(widthForRange, { leastWidth: "above 0 in", temperatureRange: "from 0 degF" });

  itHoldsTheLimitsIn(movementJointCheck, "a wall", { length: "30 ft", joints: ["9 ft", "20 ft"], backingJoints: ["20 ft"], reach: "0 in", most: "12 ft" }, {
    length: "above 0 ft", "joints.0": "from 0 ft", "backingJoints.0": "from 0 ft", reach: "from 0 in", most: "above 0 ft",
  });
  // Closer than a foot there is no panel left to move.
  itHoldsTheLimitsIn(movementLayout, "a wall", {
    wall: { kind: "rectangle", width: "30 ft", height: "18 ft" }, leftEnd: { at: "inside corner" }, rightEnd: { at: "outside corner", firstJointWithin: "6 ft" },
    openings: [{ shape: { kind: "rectangle", width: "4 ft", height: "5 ft" }, left: "9 ft", bottom: "3 ft" }], floorLines: ["9 ft"], backingJoints: { upright: ["20 ft"], level: ["9 ft"] }, mostAcross: "12 ft", mostUp: "12 ft",
  }, {
    "rightEnd.firstJointWithin": "above 0 ft", "openings.0.left": "from 0 ft", "openings.0.bottom": "from 0 ft", "floorLines.0": "from 0 ft", "backingJoints.upright.0": "from 0 ft", "backingJoints.level.0": "from 0 ft",
    mostAcross: "from 1 ft", mostUp: "from 1 ft",
  });
});

describe("cautions", () => {
  const caution = "the local code and the designer of the wall decide where joints go";
  const calculations = [jointByMultiple, jointForMovement, moistureMovement, spacingForWidth, thermalMovement, unrestrainedStrain, widthForRange];
  it.each(calculations.map(({ id, definition }) => [id, definition.cautions] as const))("%s is an estimate", (_id, cautions) => {
    expect(cautions[0]).toContain(caution);
  });

  it("those that look up a rule or draw joints say so too", () => {
    const told = [
      masonrySpacing.solve({ rule: "NCMA TEK 10-2B", height: "8 ft" }),
      panelSpacing.solve({ height: "10 ft" }),
      movementSpacing.solve({ edition: "EJ171 as of 2025", spacing: "10 ft", temperatureRange: "120 degF" }),
      movementJointCheck.solve({ length: "30 ft", joints: ["9 ft", "20 ft"], backingJoints: ["20 ft"], reach: "0 in", most: "12 ft" }),
      movementLayout.solve({ wall: { kind: "rectangle", width: "30 ft", height: "18 ft" }, leftEnd: { at: "inside corner" }, rightEnd: { at: "inside corner" }, openings: [], floorLines: [], backingJoints: { upright: [], level: [] }, mostAcross: "12 ft", mostUp: "12 ft" }),
    ];
    for (const { cautions } of told) expect(cautions.join(" ")).toContain(caution);
    // No opening, so no joint runs over one.
    expect(told.at(-1)?.cautions.join(" ")).not.toContain("A joint runs o");
  });

  it("a spacing beyond the widest on file is refused with that one", () => {
    const told = (edition: string, more: object): string | undefined => {
      const tried = movementSpacing.try({ edition, spacing: "20 ft", temperatureRange: "60 degF", ...more });
      return tried.ok ? undefined : tried.problems[0]?.wanted;
    };
    // 12 ft on the tile contractors' page as of 2025, 16 ft in the older text (Merritt and Ricketts).
    expect(told("EJ171 as of 2025", {})).toContain("at most 12 ft");
    expect(told("EJ171, older text", { movement: "1/16 in" })).toContain("at most 16 ft");
  });
});
