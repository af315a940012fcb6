import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField } from "../schema/fields.js";

/** The schema of openingShape; nobody builds it before it is used. */
export const openingShapeInput = /* @__PURE__ */ atFirstUse(() =>
  z.discriminatedUnion("kind", [
    z.strictObject({
      kind: z.literal("rectangle"),
      width: quantityField("length", { says: "width of the opening", above: 0 }),
      height: quantityField("length", { says: "height of the opening", above: 0 }),
    }),
    z.strictObject({
      kind: z.literal("arched"),
      width: quantityField("length", { says: "width of the opening", above: 0 }),
      height: quantityField("length", { says: "height of the jambs, from sill to springing", atLeast: 0 }),
      rise: quantityField("length", { says: "rise of the arch over the springing", above: 0 }),
    }),
    z.strictObject({
      kind: z.literal("round"),
      diameter: quantityField("length", { says: "diameter of the opening", above: 0 }),
    }),
  ]));

/**
 * The outline of an opening in a wall as nested input:
 *
 * - `{ kind: "rectangle", width, height }`
 * - `{ kind: "arched", width, height, rise }`: height of the jambs to the springing, rise of the arch over it
 * - `{ kind: "round", diameter }`
 */
export const openingShape = /* @__PURE__ */ z.lazy(openingShapeInput);

/** The outline of an opening as one writes it. */
export type OpeningShape = z.input<ReturnType<typeof openingShapeInput>>;

/** The outline of an opening as it has been read: its sizes are quantities. */
export type ReadOpeningShape = z.output<ReturnType<typeof openingShapeInput>>;
