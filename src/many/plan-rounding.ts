import { exact, exactArithmetic } from "../core/amount.js";
import type { Operand } from "./operands.js";
import { type Operations, quotientParts } from "./plan-operations.js";
import { type Rounding, roundReal } from "./real-kernels.js";
import { ceilWhole, floorWhole, largest, mostWhole, roundWhole } from "./whole-kernels.js";

const wholeRoundings = { ceil: ceilWhole, floor: floorWhole, round: roundWhole };

/** How a plan rounds: what is in doubt is resolved exactly, and what is larger than it was taken for is planned again. */
export interface RoundingCare {
  /** The largest size a rounding is taken to give. */
  readonly most: number;
  readonly outgrown: (most: number) => void;
  /** A row worked out exactly. */
  readonly resolve: (row: number) => number;
  /** A row that is given up. */
  readonly giveUp: (row: number) => void;
}

/** Plans a rounding to whole numbers. */
export function planRounding(operations: Operations, way: Rounding, operand: Operand, { most, outgrown, resolve, giveUp }: RoundingCare): Operand {
  if (operand.kind === "fixed") return { kind: "fixed", amount: exactArithmetic[way](operand.amount) };
  if (operand.kind === "whole" && operand.scale.isWhole()) return operand;
  const { buffers, add } = operations;
  const out = buffers.whole(exact(1n), most);
  const note = (size: number): void => {
    if (size > most) outgrown(size);
  };
  if (operand.kind !== "real") {
    const { above, below } = operations.asQuotient(operand);
    const [p, r, scale] = quotientParts({ kind: "quotient", above, below });
    const fits = scale.equals(exact(1n)) && (way !== "round" || 2 * (above.most * p + below.most * r) <= mostWhole);
    if (fits) {
      const kernel = wholeRoundings[way];
      add((count) => {
        note(kernel(out.values, above.values, p, below.values, r, giveUp, count));
      });
      return out;
    }
  }
  const argument = operations.plain(operand);
  add((count) => {
    roundReal(way, out.values, argument, resolve, count);
    note(largest(out.values, giveUp, count));
  });
  return out;
}
