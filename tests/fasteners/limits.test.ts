// What can be and what cannot. What is there has a size, a load or a strength above nought. The wind of low buildings is
// that of ASCE 7's method for heights to 60 ft; a hill never lowers it (from 100 %), and directions only lower it (to
// 100 %). A safety factor below 1 is none. Waste at the whole is no order. The elevations are our decision.
import { describe, expect, it } from "vitest";
import { allowableStrength } from "../../src/fasteners/allowable-strength.js";
import { allowableWindPressure } from "../../src/fasteners/allowable-wind-pressure.js";
import { boardEdgesOnStuds } from "../../src/fasteners/board-edges-on-studs.js";
import { boardModules } from "../../src/fasteners/board-modules.js";
import { boardScrewsEdgeField } from "../../src/fasteners/board-screws-edge-field.js";
import { boardScrews } from "../../src/fasteners/board-screws.js";
import { claddingPressure } from "../../src/fasteners/cladding-pressure.js";
import { cornerZoneWidth } from "../../src/fasteners/corner-zone-width.js";
import { deliveredThickness } from "../../src/fasteners/delivered-thickness.js";
import { elevationFactorCustomary } from "../../src/fasteners/elevation-factor-customary.js";
import { elevationFactorSi } from "../../src/fasteners/elevation-factor-si.js";
import { exposureB } from "../../src/fasteners/exposure-b.js";
import { exposureC } from "../../src/fasteners/exposure-c.js";
import { exposureD } from "../../src/fasteners/exposure-d.js";
import { groundElevationFactor } from "../../src/fasteners/ground-elevation-factor.js";
import { pullOutSince2022 } from "../../src/fasteners/pull-out-since-2022.js";
import { pullOutTo2016 } from "../../src/fasteners/pull-out-to-2016.js";
import { pullOut } from "../../src/fasteners/pull-out.js";
import { pullOverSince2022 } from "../../src/fasteners/pull-over-since-2022.js";
import { pullOverTo2016 } from "../../src/fasteners/pull-over-to-2016.js";
import { pullOver } from "../../src/fasteners/pull-over.js";
import { rakingScrews } from "../../src/fasteners/raking-screws.js";
import { screwLength } from "../../src/fasteners/screw-length.js";
import { screwOrder } from "../../src/fasteners/screw-order.js";
import { screwShearInSteel } from "../../src/fasteners/screw-shear-in-steel.js";
import { screwShear } from "../../src/fasteners/screw-shear.js";
import { spacingForPressure } from "../../src/fasteners/spacing-for-pressure.js";
import { spacingFromPressure } from "../../src/fasteners/spacing-from-pressure.js";
import { velocityPressure705 } from "../../src/fasteners/velocity-pressure-7-05.js";
import { velocityPressure710 } from "../../src/fasteners/velocity-pressure-7-10.js";
import { velocityPressure716 } from "../../src/fasteners/velocity-pressure-7-16.js";
import { wallPressureCoefficient } from "../../src/fasteners/wall-pressure-coefficient.js";
import { wallPressure } from "../../src/fasteners/wall-pressure.js";
import { windVelocityPressure } from "../../src/fasteners/wind-velocity-pressure.js";
import { itHoldsTheLimits } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(allowableStrength, { nominal: "above 0 lbf", safetyFactor: "from 100 %", screwStrength: "above 0 lbf", screwSafetyFactor: "from 100 %" });
  itHoldsTheLimits(allowableWindPressure, { strengthPressure: "above 0 psf" });
  itHoldsTheLimits(boardEdgesOnStuds, { acrossStuds: "above 0 in", alongStuds: "above 0 in", studSpacing: "above 0 in" });
  itHoldsTheLimits(boardModules, { acrossStuds: "above 0 in", studSpacing: "above 0 in" });
  itHoldsTheLimits(boardScrewsEdgeField, { acrossStuds: "above 0 in", alongStuds: "above 0 in", studSpacing: "above 0 in", screwSpacing: "above 0 in", edgeSpacing: "above 0 in", edgeDistance: "above 0 in, usually 3/8 in" });
  itHoldsTheLimits(boardScrews, { acrossStuds: "above 0 in", alongStuds: "above 0 in", studSpacing: "above 0 in", screwSpacing: "above 0 in", edgeDistance: "above 0 in, usually 3/8 in" });
  itHoldsTheLimits(claddingPressure, { speed: "above 0 mph", height: "above 0 ft, to 60 ft", topography: "from 100 %", directionality: "above 0 %, to 100 %", elevationFactor: "above 0 %", importance: "above 0 %", roofSlope: "from 0 deg, to 90 deg", effectiveArea: "above 0 ft2" });
  itHoldsTheLimits(cornerZoneWidth, { leastWidth: "above 0 ft", height: "above 0 ft, to 60 ft" });
  itHoldsTheLimits(deliveredThickness, { designThickness: "above 0 in" });
  itHoldsTheLimits(elevationFactorCustomary, { elevation: "from -1500 ft, to 20000 ft" });
  itHoldsTheLimits(elevationFactorSi, { elevation: "from -1500 ft, to 20000 ft" });
  itHoldsTheLimits(exposureB, { height: "above 0 ft, to 60 ft" });
  itHoldsTheLimits(exposureC, { height: "above 0 ft, to 60 ft" });
  itHoldsTheLimits(exposureD, { height: "above 0 ft, to 60 ft" });
  itHoldsTheLimits(groundElevationFactor, { elevation: "from -1500 ft, to 20000 ft" });
  itHoldsTheLimits(pullOutSince2022, { thickness: "above 0 in", screwDiameter: "above 0 in", ultimateStress: "above 0 ksi" });
  itHoldsTheLimits(pullOutTo2016, { thickness: "above 0 in", screwDiameter: "above 0 in", ultimateStress: "above 0 ksi" });
  itHoldsTheLimits(pullOut, { designThickness: "above 0 in", screwDiameter: "above 0 in", ultimateStress: "above 0 ksi" });
  itHoldsTheLimits(pullOverSince2022, { thickness: "above 0 in", headDiameter: "above 0 in", ultimateStress: "above 0 ksi" });
  itHoldsTheLimits(pullOverTo2016, { thickness: "above 0 in", headDiameter: "above 0 in", ultimateStress: "above 0 ksi" });
  itHoldsTheLimits(pullOver, { designThickness: "above 0 in", headDiameter: "above 0 in", ultimateStress: "above 0 ksi" });
  itHoldsTheLimits(rakingScrews, { levelLength: "above 0 in", rise: "above 0 in", screwSpacing: "above 0 in", edgeDistance: "above 0 in, usually 3/8 in" });
  itHoldsTheLimits(screwLength, { layers: "above 0 in", steel: "above 0 in", threadsPerInch: "above 0 /in", leastPenetration: "from 0 in", pointLength: "from 0 in" });
  itHoldsTheLimits(screwOrder, { boards: "above 0", screwsPerBoard: "above 0, whole", waste: "from 0 %, below 100 %", packCount: "from 1, whole" });
  itHoldsTheLimits(screwShearInSteel, { thicknessUnderHead: "above 0 in", ultimateStressUnderHead: "above 0 ksi", thickness: "above 0 in", ultimateStress: "above 0 ksi", screwDiameter: "above 0 in" });
  itHoldsTheLimits(screwShear, { designThicknessUnderHead: "above 0 in", ultimateStressUnderHead: "above 0 ksi", designThickness: "above 0 in", ultimateStress: "above 0 ksi", screwDiameter: "above 0 in" });
  itHoldsTheLimits(spacingForPressure, { pressure: "above 0 psf", studSpacing: "above 0 in", allowablePullOut: "above 0 lbf", allowableBoardPullThrough: "above 0 lbf", allowableScrewTension: "above 0 lbf", greatestSpacing: "above 0 in, usually 8 in" });
  itHoldsTheLimits(spacingFromPressure, { pressure: "above 0 psf", studSpacing: "above 0 in", allowablePullOut: "above 0 lbf", allowableBoardPullThrough: "above 0 lbf", allowableScrewTension: "above 0 lbf", greatestSpacing: "above 0 in, usually 8 in" });
  itHoldsTheLimits(velocityPressure705, { speed: "above 0 mph", exposureCoefficient: "above 0 %", topography: "from 100 %", directionality: "above 0 %, to 100 %", importance: "above 0 %" });
  itHoldsTheLimits(velocityPressure710, { speed: "above 0 mph", exposureCoefficient: "above 0 %", topography: "from 100 %", directionality: "above 0 %, to 100 %" });
  itHoldsTheLimits(velocityPressure716, { speed: "above 0 mph", exposureCoefficient: "above 0 %", topography: "from 100 %", directionality: "above 0 %, to 100 %", elevationFactor: "above 0 %" });
  itHoldsTheLimits(wallPressureCoefficient, { effectiveArea: "above 0 ft2", coefficientAt10: "any %", coefficientAt500: "any %", slopeFactor: "above 0 %, to 100 %" });
  itHoldsTheLimits(wallPressure, { velocityPressure: "above 0 psf", externalCoefficient: "any %", internalCoefficient: "from 0 %", leastPressure: "from 0 psf" });
  itHoldsTheLimits(windVelocityPressure, { speed: "above 0 mph", height: "above 0 ft, to 60 ft", topography: "from 100 %", directionality: "above 0 %, to 100 %", elevationFactor: "above 0 %", importance: "above 0 %" });
});

describe("cautions", () => {
  // What may pull a wall down is estimated here, and never approved.
  it.each([
    allowableWindPressure, cornerZoneWidth, elevationFactorCustomary, elevationFactorSi, exposureB, exposureC, exposureD, velocityPressure705, velocityPressure710, velocityPressure716, wallPressureCoefficient, wallPressure,
    allowableStrength, pullOutSince2022, pullOutTo2016, pullOverSince2022, pullOverTo2016, screwShearInSteel, spacingFromPressure,
  ].map(({ id, definition }) => [id, definition] as const))("%s leaves the decision to local code and a licensed professional", (_id, definition) => {
    expect(definition.cautions.join(" ")).toContain("An estimate");
    expect(definition.cautions.join(" ")).toContain("Local code and a licensed design professional decide.");
  });
});
