import { type Amount, exact } from "../../core/amount.js";
import type { AnyCallable } from "../../core/callable.js";
import type { Definition, GivenDefinition, StepDefinition } from "../../core/definition.js";
import { amountOf } from "../../core/quantity.js";
import { writtenQuantity } from "../../core/limits.js";
import { fromBase } from "../../core/unit-scale.js";
import type { UnitCode } from "../../core/units.js";
import { asNumber } from "./figures.js";

/** How each limit is written between a cell and its number, and in words. */
const kinds = { above: [">", "above"], atLeast: [">=", "at least"], below: ["<", "below"], atMost: ["<=", "at most"] } as const;

/** A limit as a sheet keeps it: a comparison with an amount in base units, or that a number is whole. */
export interface SheetLimit {
  readonly says: string;
  readonly sign: ">" | ">=" | "<" | "<=" | "whole";
  readonly amount: Amount;
}

/** The limits of the inputs and steps of calculations, by the id of the calculation and the name. */
export type LimitBook = (id: string, name: string) => readonly SheetLimit[];

/** Reads the limits of the calculations among what can be called. */
export function limitBook(callables: readonly AnyCallable[]): LimitBook {
  const definitions = new Map(callables.flatMap((one) => ("definition" in one ? [[one.id, one.definition as Definition] as const] : [])));
  return (id, name) => {
    const definition = definitions.get(id);
    const row = definition?.given[name] ?? definition?.steps[name];
    return row === undefined ? [] : limitsOf(row, name);
  };
}

function limitsOf(row: (GivenDefinition | StepDefinition) & { readonly whole?: boolean }, name: string): readonly SheetLimit[] {
  const compared = (Object.keys(kinds) as (keyof typeof kinds)[]).flatMap((key): SheetLimit[] => {
    const text = row[key];
    if (text === undefined) return [];
    const [sign, words] = kinds[key];
    return [{ sign, says: `${words} ${String(text)}`, amount: text === 0 ? exact(0n) : amountOf(writtenQuantity(row.is, text, name)) }];
  });
  return row.whole === true ? [...compared, { sign: "whole", says: "a whole number", amount: exact(1n) }] : compared;
}

/** A limit as a formula that is true where it holds; `slack` lets by what binary arithmetic misses by its last digits. */
function conditionOf({ sign, amount }: SheetLimit, cell: string, unit: UnitCode | undefined, slack: boolean): string {
  if (sign === "whole") return slack ? `ROUND(${cell}, 8) = ROUND(${cell}, 0)` : `${cell} = INT(${cell})`;
  const number = String(asNumber(unit === undefined ? amount : fromBase(amount, unit)));
  if (!slack || sign === ">" || sign === "<") return `${cell} ${sign} ${number}`;
  return `${cell} ${sign} ${number} ${sign === ">=" ? "-" : "+"} 1E-12`;
}

/** What an input must be, as a formula that is true where it is. */
export function inputCondition(cell: string, limits: readonly SheetLimit[], unit: UnitCode): string {
  const all = [`ISNUMBER(${cell})`, ...limits.map((limit) => conditionOf(limit, cell, unit, false))];
  return all.length === 1 ? (all[0] ?? "") : `AND(${all.join(", ")})`;
}

/** A formula that gives what another gives where it keeps its limits, and else says that there is no answer. */
export function within(formula: string, limits: readonly SheetLimit[]): string {
  if (limits.length === 0) return formula;
  const inner = /^[\w.]+$/.test(formula) ? formula : `(${formula})`;
  const conditions = limits.map((limit) => conditionOf(limit, inner, undefined, true));
  return `IF(${conditions.length === 1 ? (conditions[0] ?? "") : `AND(${conditions.join(", ")})`}, ${formula}, NA())`;
}
