// What can be and what cannot. Weights, areas and loads are above nought; a gap, a void or a gain by wetting may be
// nought; samples are whole.
import { describe } from "vitest";
import { adhesionStress } from "../../src/limits/adhesion-stress.js";
import { adhesionTest } from "../../src/limits/adhesion-test.js";
import { allowedDeflection } from "../../src/limits/allowed-deflection.js";
import { baseClearances } from "../../src/limits/base-clearances.js";
import { contactShare } from "../../src/limits/contact-share.js";
import { deckStock } from "../../src/limits/deck-stock.js";
import { framingDeflection } from "../../src/limits/framing-deflection.js";
import { layerWeight } from "../../src/limits/layer-weight.js";
import { loadOfWeight } from "../../src/limits/load-of-weight.js";
import { sampleShare } from "../../src/limits/sample-share.js";
import { thicknessAtWeight } from "../../src/limits/thickness-at-weight.js";
import { veneerLimits } from "../../src/limits/veneer-limits.js";
import { weightOnStud } from "../../src/limits/weight-on-stud.js";
import { wetWeight } from "../../src/limits/wet-weight.js";
import { assemblyWeight } from "../../src/limits/assembly-weight.js";
import { contactCoverage } from "../../src/limits/contact-coverage.js";
import { flatness } from "../../src/limits/flatness.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(adhesionStress, { load: "above 0 lbf", area: "above 0 in2" });
  itHoldsTheLimits(adhesionTest, { load: "above 0 lbf", area: "above 0 in2", required: "above 0 psi" });
  itHoldsTheLimits(allowedDeflection, { span: "above 0 ft", divisor: "above 0" });
  itHoldsTheLimits(baseClearances, { aboveEarth: "from 0 in", abovePaving: "from 0 in", aboveWalkingSurface: "from 0 in" });
  itHoldsTheLimits(contactShare, { unitArea: "above 0 in2", voidArea: "from 0 in2" });
  itHoldsTheLimits(deckStock, { faceArea: "above 0 ft2", weight: "above 0 lb/ft2", deckArea: "above 0 ft2", besides: "from 0 lb", allowedLoad: "above 0 lb/ft2" });
  itHoldsTheLimits(framingDeflection, { span: "above 0 ft", deflection: "from 0 in" });
  itHoldsTheLimits(layerWeight, { thickness: "above 0 in", density: "above 0 lb/ft3", wetGain: "from 0 %" });
  itHoldsTheLimits(loadOfWeight, { weight: "above 0 lb/ft2" });
  itHoldsTheLimits(sampleShare, { looked: "from 1, whole", good: "from 0, whole" });
  itHoldsTheLimits(thicknessAtWeight, { weight: "above 0 lb/ft2", density: "above 0 lb/ft3" });
  itHoldsTheLimits(veneerLimits, { unitWeight: "above 0 lb/ft2", thickness: "above 0 in", unitLength: "above 0 in", unitHeight: "above 0 in" });
  itHoldsTheLimits(weightOnStud, { weight: "above 0 lb/ft2", studSpacing: "above 0 in" });
  itHoldsTheLimits(wetWeight, { weight: "above 0 lb/ft2", wetGain: "from 0 %" });

  itHoldsTheLimitsIn(assemblyWeight, "layers", {
    layers: [
      { name: "stone", part: "unit", from: "density", thickness: "1-1/4 in", density: "150 lb/ft3", wetGain: "4 %" },
      { name: "bed", part: "veneer", from: "weight", weight: "5 lb/ft2", wetGain: "10 %" },
    ],
    studSpacing: "16 in",
  }, { "layers.0.thickness": "above 0 in", "layers.0.density": "above 0 lb/ft3", "layers.0.wetGain": "from 0 %", "layers.1.weight": "above 0 lb/ft2", "layers.1.wetGain": "from 0 %", studSpacing: "above 0 in" });
  const voids = { voids: ["3.1 in2", "1.6 in2"], use: "outside or wet", voidRule: "ANSI A108.19" };
  itHoldsTheLimitsIn(contactCoverage, "by its sides", { unit: { by: "sides", length: "24 in", height: "12 in" }, ...voids }, { "unit.length": "above 0 in", "unit.height": "above 0 in", "voids.1": "above 0 in2" });
  itHoldsTheLimitsIn(contactCoverage, "by its area", { unit: { by: "area", area: "288 in2" }, ...voids }, { "unit.area": "above 0 in2" });
  itHoldsTheLimitsIn(flatness, "readings", { rule: "ANSI A108.02", longestEdge: "24 in", readings: [{ where: "bay 3", straightedge: "10 ft", gap: "3/16 in" }] }, {
    longestEdge: "above 0 in", "readings.0.straightedge": "above 0 ft", "readings.0.gap": "from 0 in",
  });
});
