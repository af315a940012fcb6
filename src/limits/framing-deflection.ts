import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { deflectionTable, limitCaution } from "../data/limits.js";
import { allowedDeflection } from "./allowed-deflection.js";

/** What framing may bend behind adhered veneer. */
export interface FramingDeflection {
  readonly allowed: Quantity<"length">;
  /** How a worked-out deflection stands to it; absent where none is given. */
  readonly verdict?: "within" | "over";
}

/**
 * Deflection allowed to framing by the share of its span that the job asks for, and how a deflection that the designer worked
 * out stands to it. Stud tables made for L/240 are not for veneer.
 *
 * @example
 * ```ts
 * framingDeflection({ span: "9 ft", deflectionLimit: "L/360" }).allowed.toString(); // "0.3 in"
 * framingDeflection({ span: "9 ft", deflectionLimit: "L/600", deflection: "0.2 in" }).verdict; // "over"
 * ```
 */
export const framingDeflection = /* @__PURE__ */ composed({
  id: "limits.framing-deflection",
  title: "Deflection of framing",
  cautions: [limitCaution, "The deflection is worked out by the designer, across the wall and under the full wind on cladding, with the boards and the veneer not counted as stiffening. Tables of studs made for L/240 are not for veneer."],
  given: {
    span: { is: "length", unit: ["ft", "m"], symbol: "L", says: "span of the framing between its supports", above: 0 },
    deflectionLimit: { oneOf: ["L/360", "L/600", "L/720"], says: "share of the span that the job asks for" },
    deflection: { is: "length", unit: ["in", "mm"], symbol: "d_w", says: "deflection that the designer worked out", atLeast: 0, optional: true },
  },
  run: ({ span, deflectionLimit, deflection }, work): FramingDeflection => {
    const { divisor, basis } = deflectionTable[deflectionLimit];
    work.stand(basis);
    const { allowed } = work.part(allowedDeflection, { span, divisor }).answers;
    return { allowed, ...(deflection === undefined ? {} : { verdict: compare(deflection, allowed) > 0 ? "over" : "within" }) };
  },
});
