import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

type Kind = "rectangle" | "gable" | "trapezoid" | "segment" | "polygon";

/** Words why the functions for movement joints refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("movement", {
  ruleAsksNot: ({ rule }: { rule: string }) => sentence`${rule} does not ask for it; leave it out`,
  ruleGoesByHeight: ({ rule }: { rule: string }) => sentence`${rule} goes by the height of the wall`,
  beyondWallLength: ({ length }: { length: Quantity }) => sentence`at most the length of the wall, ${length}`,
  shapeNotLaidOut: () => "a curved top or an inner corner is not laid out; give the wall in parts, each a rectangle, a gable, a trapezoid or an outline without inner corners",
  openingBeyondWall: () => "it reaches beyond the wall",
  shapeNotSoWide: ({ kind }: { kind: Kind }) => sentence`the ${kind} is not so wide`,
  levelJointWithin: () => "a level joint lies between the foot and the top of the wall; what lies at them is no joint of this list",
  tooManyJoints: ({ most }: { most: number }) => sentence`more than ${most} joints would be needed; lay the wall out in parts`,
  editionAsksMovement: ({ edition, times }: { edition: string; times: string }) => sentence`${edition} asks for ${times} times the movement; give it, as by movement.thermal-movement`,
  editionAsksNoMovement: ({ edition }: { edition: string }) => sentence`${edition} does not ask for it; see movement.joint-for-movement`,
  greatestSpacing: ({ spacing, edition }: { spacing: Quantity; edition: string }) => sentence`at most ${spacing}, the greatest spacing of ${edition}`,
});
