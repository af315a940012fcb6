import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { quantity } from "../core/read-quantity.js";
import { brickTable, movementCaution } from "../data/movement.js";
import { panelSpacing } from "./panel-spacing.js";
import { say } from "./refusals.js";

/** Greatest spacing of joints in masonry that is laid, not adhered. */
export interface MasonrySpacing {
  readonly spacing: Quantity<"length">;
  /** Greatest distance of the first joint from a corner. */
  readonly fromCorner: Quantity<"length">;
  /** Least gap under a shelf angle; absent where the rule has none. */
  readonly underAngle?: Quantity<"length">;
}

/**
 * Greatest spacing of joints in laid masonry by a named rule: what the backing has, and the veneer follows.
 *
 * @example
 * ```ts
 * const brick = masonrySpacing({ rule: "BIA Technical Note 18A", wallKind: "with openings" });
 * brick.spacing.toString(); // "20 ft"
 * masonrySpacing({ rule: "NCMA TEK 10-2B", height: "8 ft" }).spacing.toString(); // "12 ft"
 * ```
 */
export const masonrySpacing = /* @__PURE__ */ composed({
  id: "movement.masonry-spacing",
  title: "Spacing of joints in laid masonry",
  cautions: [movementCaution, "For brickwork the lengths on both sides of a corner together are not to pass the spacing of a straight wall."],
  given: {
    rule: { oneOf: ["BIA Technical Note 18A", "NCMA TEK 10-2B"], says: "rule for brickwork, or for concrete masonry" },
    wallKind: { oneOf: ["without openings", "with openings", "parapet"], says: "kind of wall, for the rule for brickwork", optional: true },
    height: { is: "length", unit: ["ft", "m"], symbol: "H", says: "height of the wall between its supports, for the rule for concrete masonry", above: 0, optional: true },
  },
  run: ({ rule, wallKind, height }, work): MasonrySpacing => {
    const wanted = say("ruleAsksNot", { rule });
    if (rule === "NCMA TEK 10-2B") {
      if (wallKind !== undefined) work.problem({ code: "refused", path: ["wallKind"], given: wallKind, wanted });
      if (height === undefined) return work.refuse({ code: "missing", path: ["height"], given: "", wanted: say("ruleGoesByHeight", { rule }) });
      const { spacing, fromCorner } = work.part(panelSpacing, { height }).answers;
      return { spacing, fromCorner };
    }
    if (height !== undefined) work.problem({ code: "refused", path: ["height"], given: height.toString(), wanted });
    if (wallKind === undefined) return work.refuse({ code: "missing", path: ["wallKind"], given: "", wanted: { kind: "choice", of: ["without openings", "with openings", "parapet"] } });
    work.stand(brickTable.basis);
    return { spacing: quantity("length", brickTable.spacing[wallKind]), fromCorner: quantity("length", brickTable.fromCorner), underAngle: quantity("length", brickTable.underAngle) };
  },
});
