import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { howMany } from "../shapes/how-many.js";
import { jointRange } from "./joint-range.js";

/** What a course ends with. */
const courseEnd = /* @__PURE__ */ atFirstUse(() =>
  z.discriminatedUnion("kind", [
    /** An outside corner, with units that turn round it. */
    z.strictObject({
      kind: z.literal("corner"),
      longLeg: quantityField("length", { says: "long leg of a corner unit, measured on its face", above: 0 }),
      shortLeg: quantityField("length", { says: "short leg of a corner unit, measured on its face", above: 0 }),
      /** The leg that lies on this face in the first course. */
      firstCourse: telling("leg of the corner that lies on this face in the first course", z.enum(["long leg", "short leg"])),
    }),
    /** The last unit ends flush. */
    z.strictObject({ kind: z.literal("plain") }),
    /** A joint follows the last unit: at a frame, a movement joint, an inside corner. */
    z.strictObject({ kind: z.literal("joint") }),
  ]));

/** What a bond pattern is given. */
export const bondInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    length: quantityField("length", { says: "length of the course on the stone face, from end to end", above: 0 }),
    unitLength: quantityField("length", { says: "actual face length of one unit", above: 0 }),
    headJoint: telling("upright joints: least, wanted and most", jointRange()),
    left: telling("what the course ends with at its left", courseEnd()),
    right: telling("what the course ends with at its right", courseEnd()),
    /** Where no end has corner units, whose legs set it. */
    offset: z.optional(quantityField("ratio", { says: "shift of the head joints from one course to the next, as a share of a unit and its joint; nought where they stand in line", atLeast: 0, below: 1 })),
    leastCut: z.optional(quantityField("length", { says: "least length of a cut unit", above: 0 })),
    /** Courses one over another, where their units are to be counted. */
    courses: z.optional(z.pipe(howMany(), z.transform((count) => count.toNumber()))),
  }));

/** What a bond pattern is given, as it has been read. */
export type ReadBond = z.output<ReturnType<typeof bondInput>>;

/** An end of a course, as it has been read. */
export type CourseEnd = ReadBond["left"];
