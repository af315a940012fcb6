import type { Work } from "../core/composed.js";
import { compare } from "../core/quantity-arithmetic.js";
import type { Quantity } from "../core/quantity.js";
import { quantity } from "../core/read-quantity.js";
import { type steelDesignations, steelTable } from "../data/fasteners.js";
import { say } from "./refusals.js";

/** Design thickness of a ply, looked up by its mils or given as a length; thin steel brings its caution. */
export function designThicknessOf(work: Work, steel: (typeof steelDesignations)[number] | undefined, given: Quantity<"length"> | undefined): Quantity<"length"> {
  const thickness = given ?? (steel === undefined ? undefined : lookedUp(work, steel));
  if (thickness === undefined) return work.refuse({ code: "missing", path: ["steel"], given: "", wanted: say("giveSteel") });
  if (compare(thickness, quantity("length", steelTable["33 mil"].design)) < 0) {
    work.caution("Steel thinner than 33 mil carries veneer only by the design of a licensed professional.");
  }
  return thickness;
}

/** Design thickness of steel from the table, with what the row stands on. */
export function lookedUp(work: Work, steel: (typeof steelDesignations)[number]): Quantity<"length"> {
  const { design, basis } = steelTable[steel];
  work.stand(basis);
  return quantity("length", design);
}
