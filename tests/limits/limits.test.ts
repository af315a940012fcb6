// What can be and what cannot. Weights, areas and loads are above nought; a gap, a void or a gain by wetting may be
// nought; samples are whole.
import { describe, expect, it } from "vitest";
import { adhesionTable, veneerEditions, type VeneerClass } from "../../src/data/limits.js";
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

describe("figures from memory", () => {
  it("are those that their own words recall, and no others", () => {
    const recalled = [
      ...Object.values(veneerEditions).flat().map(({ basis, ...figures }: VeneerClass) => ({ basis, figures: Object.values(figures) })),
      ...Object.entries(adhesionTable).map(([name, { basis, least }]) => ({ basis, figures: [`${name.replace("ANSI ", "")} ${least}`] })),
    ].filter(({ basis }) => basis.kind === "from memory");
    expect(recalled.flatMap(({ figures }) => figures)).toHaveLength(14);
    for (const { basis, figures } of recalled) for (const figure of figures) expect(` ${"says" in basis ? (basis.says ?? "") : ""}`.split(/[,;:]| to | and | over it /).map((part) => part.trim()).some((part) => new RegExp(`(^| )${figure}( |$)`).test(part)), figure).toBe(true);
  });
});

describe("cautions", () => {
  it.each([adhesionStress, allowedDeflection].map(({ id, definition }) => [id, definition] as const))("%s leaves the decision to the code and a professional", (_id, definition) => {
    expect(definition.cautions.join(" ")).toContain("where the code asks for it, a licensed design professional decide");
  });

  it.each([layerWeight, thicknessAtWeight, weightOnStud, wetWeight].map(({ id, definition }) => [id, definition] as const))("%s is an estimate of a load", (_id, definition) => {
    expect(definition.cautions.join(" ")).toContain("is for the local code and a licensed design professional");
  });

  it("those made of several say so too", () => {
    const told = [
      adhesionTest.solve({ test: "tension", load: "100 lbf", area: "4 in2", required: "10 psi", requiredBy: "tension" }),
      flatness.solve({ rule: "ANSI A108.02", longestEdge: "24 in", readings: [{ where: "bay 3", straightedge: "10 ft", gap: "3/16 in" }] }),
      assemblyWeight.solve({ layers: [{ name: "bed", part: "veneer", from: "weight", weight: "5 lb/ft2", wetGain: "10 %" }, { name: "lining", part: "wall", from: "density table", material: "gypsum board", thickness: "1/2 in", wetGain: "0 %" }] }),
    ].map(({ cautions }) => cautions.join(" "));
    for (const text of told) expect(text).toContain("licensed design professional");
    // The least density of a stone is only spoken of where the stone is the unit.
    expect(told[2]).not.toContain("The densities");
  });
});
