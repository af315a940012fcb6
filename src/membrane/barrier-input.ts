import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";
import { howMany } from "../shapes/how-many.js";
import { openingShapeInput } from "../shapes/opening-shape.js";
import { wallShapeInput } from "../shapes/wall-shape.js";

const depthOf = (edge: string): ReturnType<typeof quantityField<"length">> => quantityField("length", { says: `how far the barrier goes into the opening at the ${edge}`, atLeast: 0 });

/** The walls, their openings and their edges. */
export const barrierInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    walls: readOnly(telling("walls that are coated", z.array(z.strictObject({ shape: telling("shape of the wall", wallShapeInput()), count: howMany() })))),
    openings: readOnly(
      telling("openings in the walls", z.array(
        z.strictObject({
          shape: telling("shape of the opening", openingShapeInput()),
          count: howMany(),
          returnDepth: z.optional(quantityField("length", { says: "how far the barrier goes into the opening, all round", atLeast: 0 })),
          returnDepths: z.optional(telling("how far the barrier goes into the opening, edge by edge", z.strictObject({ sill: depthOf("sill"), jambs: depthOf("jambs"), head: depthOf("head") }))),
        }),
      )),
    ),
    deductFrom: quantityField("area", { says: "size from which an opening is deducted", atLeast: 0 }),
    edges: z.optional(
      readOnly(
        telling("edges that the barrier goes past", z.array(
          z.strictObject({
            edge: telling("which edge it is", z.enum(["parapet", "sill", "corner"])),
            length: quantityField("length", { says: "length of the edge", above: 0 }),
            depth: quantityField("length", { says: "how far the barrier goes past the edge", above: 0 }),
            count: howMany(),
          }),
        )),
      ),
    ),
  }));

/** An opening as it has been read. */
export type ReadBarrierOpening = z.output<ReturnType<typeof barrierInput>>["openings"][number];
