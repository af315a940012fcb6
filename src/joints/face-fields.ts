import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";

/** A face of several sizes of unit, all laid with the same joints. */
export const mixedFaceFields = /* @__PURE__ */ atFirstUse(() => ({
  area: quantityField("area", { says: "wall face to be pointed, openings out", above: 0 }),
  sizes: readOnly(
    telling("sizes of units, each with its share of the face", z.array(
      z.strictObject({
        unitLength: quantityField("length", { says: "actual face length of a unit of this size", above: 0 }),
        unitHeight: quantityField("length", { says: "actual face height of a unit of this size", above: 0 }),
        share: quantityField("ratio", { says: "share of the face that this size makes up, joints with it", above: 0, atMost: 1 }),
      }),
    )),
  ),
  headJoint: quantityField("length", { says: "width of the upright joints", above: 0 }),
  bedJoint: quantityField("length", { says: "width of the level joints", above: 0 }),
}));

/**
 * The joints of a face as nested input:
 *
 * - `{ pattern: "coursed", area, unitLength, unitHeight, headJoint, bedJoint }`: units of one size in courses
 * - `{ pattern: "mixed", area, sizes: [{ unitLength, unitHeight, share }, ...], headJoint, bedJoint }`: several sizes
 * - `{ pattern: "irregular", length, width }`: stone without courses, by the length and mean width of its joints
 */
export const jointFace = /* @__PURE__ */ atFirstUse(() =>
  z.discriminatedUnion("pattern", [
    z.strictObject({
      pattern: z.literal("coursed"),
      area: mixedFaceFields().area,
      unitLength: quantityField("length", { says: "actual face length of one unit", above: 0 }),
      unitHeight: quantityField("length", { says: "actual face height of one unit", above: 0 }),
      headJoint: mixedFaceFields().headJoint,
      bedJoint: mixedFaceFields().bedJoint,
    }),
    z.strictObject({ pattern: z.literal("mixed"), ...mixedFaceFields() }),
    z.strictObject({
      pattern: z.literal("irregular"),
      length: quantityField("length", { says: "length of joint, crossings counted once", above: 0 }),
      width: quantityField("length", { says: "mean width of the joints", above: 0 }),
    }),
  ]));

/** The joints of a face, read. */
export type JointFace = z.output<ReturnType<typeof jointFace>>;

/**
 * The depth to be pointed, as nested input:
 *
 * - `{ from: "open joints", depth }`: measured in the joints
 * - `{ from: "unit and bed", unitThickness, bed, squeezeOut }`: unit and bed, less what was pressed out of the bed
 */
export const depthToPoint = /* @__PURE__ */ atFirstUse(() =>
  z.discriminatedUnion("from", [
    z.strictObject({ from: z.literal("open joints"), depth: quantityField("length", { says: "depth of joint to be filled", above: 0 }) }),
    z.strictObject({
      from: z.literal("unit and bed"),
      unitThickness: quantityField("length", { says: "mean thickness of the units at their edges", above: 0 }),
      bed: quantityField("length", { says: "mean thickness of the bed behind the units", atLeast: 0 }),
      squeezeOut: quantityField("length", { says: "depth of joint filled by mortar pressed out of the bed, from the wall out", atLeast: 0 }),
    }),
  ]));

/** How the joints are tooled, as nested input: the profile, and the radius of the tool or the depth of the profile. */
export const tooling = /* @__PURE__ */ atFirstUse(() =>
  z.discriminatedUnion("profile", [
    z.strictObject({ profile: z.literal("flush") }),
    z.strictObject({ profile: z.literal("concave"), toolRadius: quantityField("length", { says: "radius of the jointing tool", above: 0 }) }),
    z.strictObject({
      profile: telling("profile of the tooled joint", z.literal(["v", "raked", "weathered", "struck"])),
      profileDepth: quantityField("length", { says: "depth of the profile at its deepest", above: 0 }),
    }),
  ]));
