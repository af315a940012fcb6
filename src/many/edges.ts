import { type Amount, exactArithmetic } from "../core/amount.js";
import { amountOf } from "../core/quantity.js";
import { type Limited, writtenQuantity } from "../core/limits.js";

/** A limit as an edge of a range, in base units. */
export interface Edge {
  readonly amount: Amount;
  /** Whether the range lies above it. */
  readonly low: boolean;
  /** Whether the edge itself is in the range. */
  readonly met: boolean;
}

/** The range of an input or a step. */
export interface Edges {
  readonly edges: readonly Edge[];
  readonly whole: boolean;
}

const kinds = { above: [true, false], atLeast: [true, true], below: [false, false], atMost: [false, true] } as const;

/** The edges of an input or a step. */
export function edgesOf(row: Limited, where: string): Edges {
  const edges = (Object.keys(kinds) as (keyof typeof kinds)[]).flatMap((key): Edge[] => {
    const text = row[key];
    if (text === undefined) return [];
    const [low, met] = kinds[key];
    return [{ amount: text === 0 ? exactArithmetic.literal("0") : amountOf(writtenQuantity(row.is, text, where)), low, met }];
  });
  return { edges, whole: row.whole === true };
}

/** Whether an amount, in the order it has to the edge, is on the right side of it. */
export function isWithin({ low, met }: Edge, order: number): boolean {
  return order === 0 ? met : order > 0 === low;
}

/** Whether an amount is in the range. */
export function areWithin({ edges, whole }: Edges, amount: Amount): boolean {
  return edges.every((edge) => isWithin(edge, exactArithmetic.compare(amount, edge.amount))) && (!whole || exactArithmetic.compare(amount, exactArithmetic.floor(amount)) === 0);
}
