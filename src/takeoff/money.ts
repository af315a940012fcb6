import * as z from "zod/mini";
import { Decimal } from "../core/amount.js";
import { problem, shown } from "../core/problems.js";
import { telling } from "../schema/fields.js";
import { say } from "./refusals.js";

/** A sum of money in its currency; there is no change from one currency to another. */
export interface Money {
  readonly amount: Decimal;
  /** Three capital letters, as banks write them. */
  readonly currency: string;
}

/** Money in nested input, as a zod type. */
export type MoneyField = z.ZodMiniPipe<z.ZodMiniCustom<string, string>, z.ZodMiniTransform<Money, string>>;

const written = /^(\d{1,15}(?:\.\d{1,6})?) ([A-Z]{3})$/;

/** Money in nested input: a number, a blank and the currency in three capital letters, such as `84.50 USD`. */
export function moneyField(says: string): MoneyField {
  const read = z.transform((given: string, context): Money => {
    const [, digits, currency] = (typeof given === "string" ? written.exec(given) : null) ?? [];
    if (digits !== undefined && currency !== undefined) return { amount: new Decimal(digits), currency };
    const wanted = say("writeMoney");
    const trouble = (given as unknown) === undefined ? { code: "missing", given: "" } as const : { code: "wrongKind", given: shown(given) } as const;
    context.issues.push({ code: "custom", input: given, message: wanted.words, params: { problem: problem({ ...trouble, path: [], says, wanted }) } });
    return z.NEVER;
  });
  return telling(says, z.pipe(z.custom<string>(() => true), read));
}

/** A sum as it is written: `84.50 USD`, with as many places as the smallest amount of the currency has. */
export function moneyText(amount: Decimal, smallest: Money): string {
  return `${amount.toFixed(smallest.amount.decimalPlaces())} ${smallest.currency}`;
}
