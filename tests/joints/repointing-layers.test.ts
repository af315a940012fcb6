import { describe, expect, it } from "vitest";
import { quantity } from "../../src/core/read-quantity.js";
import { repointingLayers } from "../../src/joints/repointing-layers.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vectors } from "../support/vectors.js";

describe("repointingLayers", () => {
  it("counts layers of 1/4 in (US National Park Service, Preservation Brief 2, as quoted by a teaching edition)", () => {
    const rows = vectors("repoint-layers-");
    expect(rows).toHaveLength(4);
    for (const { inputs, expected } of rows) {
      expectPrinted(repointingLayers({ depth: quantity("length", (inputs.depth ?? "") as "1 in") }).layers.to(), expected.layers);
    }
  });

  it("takes other layers", () => {
    expect(repointingLayers({ depth: "3/4 in", layer: "3/8 in" }).layers.toString()).toBe("2");
    expect(repointingLayers({ depth: "18 mm", layer: "6 mm" }).layers.toString()).toBe("3");
    // What is left over two whole layers is a third one.
    expect(repointingLayers({ depth: "5/8 in" }).layers.toString()).toBe("3");
    expect(faults(repointingLayers.try({ depth: "3/4 in", layer: "0 in" }))).toEqual(["tooLow layer"]);
  });
});
