import type { Basis } from "../core/basis.js";
import type { Work } from "../core/composed.js";
import type { DimensionName } from "../core/dimensions.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity, type Readable } from "../core/read-quantity.js";

/** How a figure stands to its limit. One that is only remembered is not on file. */
export type Verdict = "within" | "over" | "under" | "not on file";

/** One figure held against its limit. */
export interface Judged {
  /** What is judged, in words. */
  readonly of: string;
  readonly measured: Quantity;
  readonly verdict: Verdict;
  /** The limit on file; absent where none is. */
  readonly limit?: Quantity;
  /** A limit recalled and not seen; it decides nothing. */
  readonly remembered?: Quantity;
  readonly says: string;
}

/** A limit as a table or the job has it, and whether it is the most or the least allowed. */
interface OnFile {
  readonly most?: string | Quantity | undefined;
  readonly least?: string | Quantity | undefined;
  readonly basis: Basis;
}

/** Holds a figure against a limit; a figure at the limit is within it. */
export function judge(of: string, measured: Quantity, { most, least, basis }: OnFile, work: Work): Judged {
  const figure = most ?? least;
  if (figure === undefined) return { of, measured, verdict: "not on file", says: `${of}: no limit is on file here for ${measured.toString()}` };
  work.stand(basis);
  const limit = quantity<DimensionName>(measured.dimension, figure as Readable<DimensionName>);
  const order = compare(measured, limit);
  const side = most === undefined ? (order < 0 ? "under" : "within") : order > 0 ? "over" : "within";
  if (basis.kind !== "from memory") return { of, measured, verdict: side, limit, says: `${of}: ${measured.toString()} ${side === "within" && most === undefined ? "reaches" : `is ${side}`} ${limit.toString()}` };
  work.caution("A figure from memory was not seen in its source and decides nothing: read the edition.");
  const says = `${of}: no limit is on file; from memory it is ${limit.toString()}, and ${measured.toString()} would be ${side}`;
  return { of, measured, verdict: "not on file", remembered: limit, says };
}
