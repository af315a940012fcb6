import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { polygonPoints } from "./polygon-points.js";

/** The schema of wallShape; nobody builds it before it is used. */
export const wallShapeInput = /* @__PURE__ */ atFirstUse(() =>
  z.discriminatedUnion("kind", [
    z.strictObject({
      kind: z.literal("rectangle"),
      width: quantityField("length", { says: "width of the wall", above: 0 }),
      height: quantityField("length", { says: "height of the wall", above: 0 }),
    }),
    z.strictObject({
      kind: z.literal("gable"),
      width: quantityField("length", { says: "width of the gable at the eaves", above: 0 }),
      height: quantityField("length", { says: "height of the peak over the eaves", above: 0 }),
    }),
    z.strictObject({
      kind: z.literal("trapezoid"),
      width: quantityField("length", { says: "level width of the wall", above: 0 }),
      leftHeight: quantityField("length", { says: "height at the left", atLeast: 0 }),
      rightHeight: quantityField("length", { says: "height at the right", atLeast: 0 }),
    }),
    z.strictObject({
      kind: z.literal("segment"),
      width: quantityField("length", { says: "width between the ends of the curve", above: 0 }),
      rise: quantityField("length", { says: "rise of the curve over its ends", above: 0 }),
    }),
    z.strictObject({ kind: z.literal("polygon"), points: telling("corners of the outline", polygonPoints()) }),
  ]));

/**
 * The outline of a wall, or of a part of one, as nested input:
 *
 * - `{ kind: "rectangle", width, height }`
 * - `{ kind: "gable", width, height }`: the triangle over the eaves, its peak above the middle
 * - `{ kind: "trapezoid", width, leftHeight, rightHeight }`: upright sides, level base
 * - `{ kind: "segment", width, rise }`: the curved top of a wall, up to a half circle
 * - `{ kind: "polygon", points: [{ x, y }, ...] }`: at least 3 corners in order; it closes by itself
 */
export const wallShape = /* @__PURE__ */ z.lazy(wallShapeInput);

/** The outline of a wall as one writes it. */
export type WallShape = z.input<ReturnType<typeof wallShapeInput>>;

/** The outline of a wall as it has been read: its sizes are quantities. */
export type ReadWallShape = z.output<ReturnType<typeof wallShapeInput>>;
