import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract } from "../core/quantity-arithmetic.js";
import { jointsThrough, movementCaution } from "../data/movement.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { say } from "./refusals.js";

const places = (says: string): z.ZodMiniArray<ReturnType<typeof quantityField<"length">>> => telling(says, z.array(quantityField("length", { says, atLeast: 0 })));

const checkInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    length: quantityField("length", { says: "length of the wall along which the joints are counted", above: 0 }),
    joints: places("from the beginning of the wall to a joint in the veneer"),
    backingJoints: places("from the beginning of the wall to a joint in the backing"),
    /** How far beside a joint of the backing the joint of the veneer may lie; nought where it is to lie on it. */
    reach: quantityField("length", { says: "how far beside a joint of the backing its joint in the veneer may lie", atLeast: 0 }),
    most: quantityField("length", { says: "greatest distance between joints", above: 0 }),
  }));

/** A stretch without a joint that is longer than allowed. */
export interface MovementGap {
  readonly from: Quantity<"length">;
  readonly to: Quantity<"length">;
  readonly width: Quantity<"length">;
}

/** What is wrong with joints as they are drawn or built. */
export interface MovementJointCheck {
  /** Joints of the backing that no joint of the veneer lies on. */
  readonly notCarried: readonly Quantity<"length">[];
  readonly tooWide: readonly MovementGap[];
}

/**
 * Joints as drawn or built, upright along a wall or level up it: which joints of the backing they leave out, and where they
 * lie too far apart.
 *
 * @example
 * ```ts
 * const drawn = movementJointCheck({ length: "30 ft", joints: ["9 ft", "20 ft"], backingJoints: ["20 ft", "24 ft"], reach: "0 in", most: "10 ft" });
 * drawn.notCarried.map(String); // ["24 ft"]
 * drawn.tooWide.map(({ width }) => width.toString()); // ["11 ft"]
 * ```
 */
export const movementJointCheck = /* @__PURE__ */ composed({
  id: "movement.movement-joint-check",
  title: "Check of movement joints against the backing and a spacing",
  reads: /* @__PURE__ */ nested(checkInput),
  cautions: [movementCaution],
  run: ({ length, joints, backingJoints, reach, most }, work): MovementJointCheck => {
    work.stand(jointsThrough);
    for (const [name, list] of Object.entries({ joints, backingJoints })) {
      list.forEach((at, index) => {
        if (compare(at, length) > 0) work.problem({ code: "tooHigh", path: [name, index], given: at.toString(), wanted: say("beyondWallLength", { length }) });
      });
    }
    const carries = (at: Quantity<"length">) => (joint: Quantity<"length">): boolean => compare(compare(joint, at) < 0 ? subtract(at, joint) : subtract(joint, at), reach) <= 0;
    const bounds = [subtract(length, length), ...[...joints].sort(compare), length];
    const gaps = bounds.slice(1).map((to, index): MovementGap => {
      const from = bounds[index] ?? to;
      return { from, to, width: subtract(to, from) };
    });
    return { notCarried: backingJoints.filter((at) => !joints.some(carries(at))), tooWide: gaps.filter(({ width }) => compare(width, most) > 0) };
  },
});
