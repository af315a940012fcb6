import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { nameField, quantityField, telling } from "../schema/fields.js";
import { howMany } from "../shapes/how-many.js";
import { openingShapeInput } from "../shapes/opening-shape.js";
import { wallShapeInput } from "../shapes/wall-shape.js";

/** A length above nought. */
export const length = (says: string): ReturnType<typeof quantityField<"length">> => quantityField("length", { says, above: 0 });

/** An opening, and how the stone turns into it. */
const opening = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    name: z.optional(telling("name of the opening", nameField())),
    shape: telling("shape of the opening", openingShapeInput()),
    count: howMany(),
    returnDepth: quantityField("length", { says: "how far the face turns into the opening; 0 in where it stops at its edge", atLeast: 0 }),
    returnUnits: telling("whether corner units or flats cover the returns", z.enum(["corner", "flat"])),
    toBase: z.optional(telling("whether the opening reaches the foot of the wall", z.boolean())),
  }));

/**
 * One corner of walls, listed once: its height, whether the face round it is one of this job's elevations, and which.
 * Which it is has to be told only where units are bought by elevation.
 */
const corner = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({ height: length("height of the corner"), otherFace: telling("whether the face round the corner is an elevation of this job", z.enum(["elevation", "unclad"])), count: howMany(), with: z.optional(telling("elevation round the corner", nameField())) }));

/** An underside that is clad, such as that over a recessed door. */
const soffit = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({ name: z.optional(telling("name of the soffit", nameField())), length: length("length of the soffit along the wall"), depth: length("depth of the soffit"), count: howMany() }));

/** A cap along the top of a wall. */
const cap = /* @__PURE__ */ atFirstUse(() => z.strictObject({ length: length("length of the cap"), count: howMany() }));

/** One wall as it is drawn, with what is cut out of it and where it turns. */
export const elevation = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    name: telling("name of the elevation", nameField()),
    shape: telling("shape of the wall", wallShapeInput()),
    openings: telling("openings in the wall", z.array(opening())),
    outsideCorners: telling("outside corners, each listed once", z.array(corner())),
    insideCorners: z.optional(telling("inside corners, each listed once", z.array(corner()))),
    soffits: z.optional(telling("soffits that are clad", z.array(soffit()))),
    caps: z.optional(telling("caps along the top of the wall", z.array(cap()))),
  }));

/** A column that is clad all round: four faces and four outside corners. */
export const column = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({ name: telling("name of the column", nameField()), width: length("width of the column"), depth: length("depth of the column"), height: length("height of the column"), count: howMany() }));
