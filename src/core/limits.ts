import { type Amount, exactArithmetic as arithmetic, isExact, sign } from "./amount.js";
import type { DimensionName } from "./dimensions.js";
import { problem, type ProblemCode, type Trouble } from "./problems.js";
import { amountOf, type Quantity } from "./quantity.js";
import { readQuantity } from "./read-quantity.js";
import type { Wanted } from "./wording.js";

/** A limit made ready: what a problem says of it, and whether an amount in base units keeps it. */
export interface Limit {
  readonly code: ProblemCode;
  readonly wanted: Wanted;
  readonly holds: (amount: Amount) => boolean;
}

/** What has limits: an input or a step. */
export type Limited = { readonly is: DimensionName; readonly whole?: boolean } & Readonly<Partial<Record<"above" | "atLeast" | "below" | "atMost", string | number>>>;

/** Each limit with the code of its problem, and which orders of the value and the limit it allows. */
const limitKinds = {
  above: ["tooLow", (order) => order > 0],
  atLeast: ["tooLow", (order) => order >= 0],
  below: ["tooHigh", (order) => order < 0],
  atMost: ["tooHigh", (order) => order <= 0],
} as const satisfies Record<string, readonly [ProblemCode, (order: number) => boolean]>;

/** A quantity that the author of a definition wrote: a default, a constant or a limit. */
export function writtenQuantity<D extends DimensionName>(dimension: D, text: string | number, where: string): Quantity<D> {
  const read = readQuantity(dimension, text, { path: [where] });
  if ("code" in read) throw new Error(problem(read).message);
  return read;
}

/** The limits of an input or a step, made ready. */
export function limitsOf(row: Limited, where: string): readonly Limit[] {
  const limits = (Object.keys(limitKinds) as (keyof typeof limitKinds)[]).flatMap((key): Limit[] => {
    const text = row[key];
    if (text === undefined) return [];
    const [code, holds] = limitKinds[key];
    const wanted: Wanted = { kind: "limit", limit: key, value: String(text) };
    if (text === 0) return [{ code, wanted, holds: (given) => holds(sign(given)) }];
    const amount = amountOf(writtenQuantity(row.is, text, where));
    return [{ code, wanted, holds: (given) => holds(arithmetic.compare(given, amount)) }];
  });
  return row.whole === true ? [...limits, whole] : limits;
}

const whole: Limit = { code: "notWhole", wanted: { kind: "whole" }, holds: (amount) => (isExact(amount) ? amount.isWhole() : arithmetic.compare(amount, arithmetic.floor(amount)) === 0) };

/** The first limit that an amount breaks. */
export function brokenLimit(limits: readonly Limit[], amount: Amount): Limit | undefined {
  for (const limit of limits) if (!limit.holds(amount)) return limit;
  return undefined;
}

/** What is wrong with a quantity beyond its limits. A share of 10 where less than 1 is wanted was meant for 10 %. */
export function beyondLimit(limits: readonly Limit[], quantity: Quantity): Pick<Trouble, "code" | "given" | "wanted"> | undefined {
  const broken = brokenLimit(limits, amountOf(quantity));
  if (broken === undefined) return undefined;
  const given = quantity.toString();
  const percent = quantity.unit === "ratio" && broken.code === "tooHigh" ? { percent: `${given} %` } : {};
  return { code: broken.code, given, wanted: { ...broken.wanted, ...percent } };
}
