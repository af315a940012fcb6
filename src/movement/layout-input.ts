import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { openingShapeInput } from "../shapes/opening-shape.js";
import { wallShapeInput } from "../shapes/wall-shape.js";

/** What an end of the wall runs into: at an inside corner and at another material there is a joint; an outside corner has its first joint near by. */
const end = /* @__PURE__ */ atFirstUse(() =>
  z.discriminatedUnion("at", [
    z.strictObject({ at: z.literal("inside corner") }),
    z.strictObject({ at: z.literal("other material") }),
    z.strictObject({ at: z.literal("outside corner"), firstJointWithin: quantityField("length", { says: "greatest distance of the first joint from the outside corner", above: 0 }) }),
  ]));

const positions = (says: string): z.ZodMiniArray<ReturnType<typeof quantityField<"length">>> => telling(says, z.array(quantityField("length", { says, atLeast: 0 })));

/** What the layout of movement joints is given. */
export const movementInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    wall: telling("wall the joints are laid out on", wallShapeInput()),
    leftEnd: telling("what the left end of the wall runs into", end()),
    rightEnd: telling("what the right end of the wall runs into", end()),
    /** Each with its place: the box round it from the left end and the foot of the wall. */
    openings: telling("openings in the wall, each with its place", z.array(
      z.strictObject({
        shape: telling("shape of the opening", openingShapeInput()),
        left: quantityField("length", { says: "from the left end of the wall to the opening", atLeast: 0 }),
        bottom: quantityField("length", { says: "from the foot of the wall to the opening", atLeast: 0 }),
      }),
    )),
    /** Heights at which a floor meets the framing. */
    floorLines: positions("height of a floor line over the foot of the wall"),
    /** Structural and movement joints of what is behind the veneer. */
    backingJoints: telling("joints of what is behind the veneer", z.strictObject({
      upright: positions("from the left end of the wall to an upright joint in the backing"),
      level: positions("height of a level joint in the backing over the foot of the wall"),
    })),
    mostAcross: quantityField("length", { says: "greatest distance between upright joints", atLeast: "1 ft" }),
    mostUp: quantityField("length", { says: "greatest distance between level joints", atLeast: "1 ft" }),
  }));

/** What the layout of movement joints is given, as it has been read. */
export type ReadMovement = z.output<ReturnType<typeof movementInput>>;
