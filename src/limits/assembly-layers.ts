import * as z from "zod/mini";
import { densityTable, layerTable } from "../data/limits.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";

/** What all layers have. */
const layerFields = /* @__PURE__ */ atFirstUse(() => ({
  name: telling("name of the layer", z.string()),
  /** `"unit"`: the units themselves; `"veneer"`: what is set with them, as bed, joint mortar and scratch coat; `"wall"`: all behind. */
  part: telling("whether the layer is the unit, the veneer set with it, or the wall behind", z.enum(["unit", "veneer", "wall"])),
  wetGain: quantityField("ratio", { says: "water taken up, as a share of the dry weight", atLeast: 0 }),
}));

const thickness = /* @__PURE__ */ atFirstUse(() => quantityField("length", { says: "mean thickness of the layer", above: 0 }));

/** Each weight from one of four: its weight, its thickness and density, a table of layers, a thickness and a table of densities. */
export const assemblyInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    layers: telling("layers of the wall and its veneer", z.array(
      z.discriminatedUnion("from", [
        z.strictObject({ ...layerFields(), from: z.literal("weight"), weight: quantityField("arealMass", { says: "weight per area of face, dry", above: 0 }) }),
        z.strictObject({ ...layerFields(), from: z.literal("density"), thickness: thickness(), density: quantityField("density", { says: "density of the layer, dry", above: 0 }) }),
        z.strictObject({ ...layerFields(), from: z.literal("layer table"), material: telling("material, as the table has it", z.enum(Object.keys(layerTable) as (keyof typeof layerTable)[])) }),
        z.strictObject({ ...layerFields(), from: z.literal("density table"), thickness: thickness(), material: telling("material, as the table has it", z.enum(Object.keys(densityTable) as (keyof typeof densityTable)[])) }),
      ]),
    )),
    studSpacing: z.optional(quantityField("length", { says: "spacing of the studs, centre to centre", above: 0 })),
  }));

/** A layer as it has been read. */
export type ReadLayer = z.output<ReturnType<typeof assemblyInput>>["layers"][number];
