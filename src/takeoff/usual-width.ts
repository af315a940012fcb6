import { basisText } from "../core/basis.js";
import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { quantity } from "../core/read-quantity.js";
import { usualJoint } from "../data/joints.js";

/** The width of a joint; 3/8 in, said to be assumed, where none is given. */
export function usualWidth(given: Quantity<"length"> | undefined, name: string, work: Work): Quantity<"length"> {
  if (given !== undefined) return given;
  work.assume(`${name} taken as 3/8 in: ${basisText(usualJoint)}`);
  work.stand(usualJoint);
  return quantity("length", "3/8 in");
}
