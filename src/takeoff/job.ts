import * as z from "zod/mini";
import { column, elevation } from "./job-elevation.js";
import { layer } from "./job-layers.js";
import { allowance, checks, labour, pack, prices, spare, weights } from "./job-order.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { nameField, telling } from "../schema/fields.js";

/** Everything of a job but its walls: the layers in order from the studs out, and how items are sold, by their names. */
const assemblyShape = /* @__PURE__ */ atFirstUse(() => ({
  measuredTo: telling("face that the walls are measured to", z.enum(["backing", "stoneFace"])),
  layers: telling("layers of the wall, from what carries it outwards", z.array(layer())),
  packs: telling("how items are sold, by their names", z.record(nameField(), pack())),
  allowances: telling("what is added to items, by their names", z.record(nameField(), allowance())),
  spare: z.optional(telling("spare stock, by the name of the item", spare())),
  weights: z.optional(telling("what weighs how much", weights())),
  prices: z.optional(telling("prices, all in one currency", prices())),
  labour: z.optional(telling("your own rates of work", labour())),
  checks: z.optional(telling("limits the job is held against", checks())),
}));

/** How walls are built and bought, without the walls. */
export const assemblySchema = /* @__PURE__ */ atFirstUse(() => z.strictObject(assemblyShape()));

/**
 * A job as nested input: its elevations, the layers of the wall in order from the studs out, how each item is sold and
 * what is added for waste, both by the name of the item; where they are wanted, spare stock, weights, prices, labour and
 * checks.
 */
export const jobSchema = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    name: z.optional(telling("name of the job", nameField())),
    elevations: telling("elevations of the job", z.array(elevation())),
    columns: z.optional(telling("columns that are clad all round", z.array(column()))),
    ...assemblyShape(),
  }));

/** A job as one writes it; its quantities are texts or quantities, so that a JSON import compiles. */
export type Job = z.input<ReturnType<typeof jobSchema>>;

/** A job without its walls, as one writes it. */
export type Assembly = z.input<ReturnType<typeof assemblySchema>>;

/** A job as it has been read. */
export type ReadJob = z.output<ReturnType<typeof jobSchema>>;

/** A job without its walls, as it has been read. */
export type ReadAssembly = z.output<ReturnType<typeof assemblySchema>>;

/** One layer of a job as it has been read. */
export type Layer = ReadJob["layers"][number];

/** A layer of one kind. */
export type LayerOf<Kind extends Layer["kind"]> = Extract<Layer, { readonly kind: Kind }>;
