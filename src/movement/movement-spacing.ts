import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { movementCaution, spacingTable } from "../data/movement.js";
import { jointByMultiple } from "./joint-by-multiple.js";
import { say } from "./refusals.js";
import { widthForRange } from "./width-for-range.js";

/** Spacing and width of movement joints in adhered veneer outside. */
export interface MovementSpacing {
  readonly spacing: Quantity<"length">;
  /** The greatest spacing that the rule has. */
  readonly mostSpacing: Quantity<"length">;
  /** Least width of the joints. */
  readonly width: Quantity<"length">;
  /** Of this for the range of temperature. */
  readonly extra: Quantity<"length">;
  /** What the width goes by. */
  readonly governedBy: "spacing and range" | "movement";
}

/**
 * Least width of movement joints in adhered veneer outside, by a named edition of the rule, the spacing wanted and the range
 * of temperature. Between two spacings of the rule the width of the wider one is taken.
 *
 * @example
 * ```ts
 * const joints = movementSpacing({ edition: "EJ171 as of 2025", spacing: "10 ft", temperatureRange: "120 degF" });
 * joints.width.toString(); // "0.625 in"
 * joints.mostSpacing.toString(); // "12 ft"
 * ```
 */
export const movementSpacing = /* @__PURE__ */ composed({
  id: "movement.movement-spacing",
  title: "Spacing and width of movement joints in adhered veneer",
  cautions: [movementCaution],
  given: {
    edition: { oneOf: ["EJ171 as of 2025", "EJ171, older text"], says: "edition of the rule; the older text allows joints further apart" },
    spacing: { is: "length", unit: ["ft", "m"], symbol: "S", says: "spacing of joints that is wanted", above: 0 },
    temperatureRange: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "T", says: "coldest to hottest of the year", atLeast: 0 },
    movement: { is: "length", unit: ["in", "mm"], symbol: "m", says: "movement expected at the joint, which the older text asks for", above: 0, optional: true },
  },
  run: ({ edition, spacing, temperatureRange, movement }, work): MovementSpacing => {
    const { basis, widths, multiple } = spacingTable[edition];
    work.stand(basis);
    const row = widths.find(({ to }) => compare(spacing, quantity("length", to)) <= 0);
    const mostSpacing = quantity("length", widths[widths.length - 1]?.to ?? "0 ft");
    if (multiple !== undefined && movement === undefined) work.problem({ code: "missing", path: ["movement"], given: "", wanted: say("editionAsksMovement", { edition, times: multiple }) });
    if (multiple === undefined && movement !== undefined) work.problem({ code: "refused", path: ["movement"], given: movement.toString(), wanted: say("editionAsksNoMovement", { edition }) });
    if (row === undefined) return work.refuse({ code: "tooHigh", path: ["spacing"], given: spacing.toString(), wanted: say("greatestSpacing", { spacing: mostSpacing, edition }) });
    const byRange = work.part(widthForRange, { leastWidth: quantity("length", row.width), temperatureRange }).answers;
    const found = { spacing, mostSpacing, extra: byRange.extra };
    if (multiple === undefined || movement === undefined) return { ...found, width: byRange.width, governedBy: "spacing and range" };
    const { width } = work.part(jointByMultiple, { movement, multiple, leastWidth: byRange.width }).answers;
    return { ...found, width, governedBy: compare(width, byRange.width) > 0 ? "movement" : "spacing and range" };
  },
});
