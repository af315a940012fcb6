// Inputs from anywhere in the range that a definition states, in any unit of their dimension.
import fc from "fast-check";
import { Decimal, toDecimal } from "../../src/core/amount.js";
import { choicesOf } from "../../src/core/prepared.js";
import type { Entries, EntryDefinition } from "../../src/core/definition.js";
import { type DimensionName, unitsOf } from "../../src/core/index.js";
import { amountOf } from "../../src/core/quantity.js";
import { writtenQuantity } from "../../src/core/limits.js";
import { fromBase } from "../../src/core/unit-scale.js";
import { type UnitCode, unitSymbol } from "../../src/core/units.js";

/** What is given under each name, as people write it. */
export type Given = Readonly<Record<string, unknown>>;

/** Where no limit is stated: as small and as large as this, in the unit at hand. */
const [least, most] = [new Decimal("1e-6"), new Decimal("1e9")];
/** How finely a range is divided; its ends are drawn too. */
const parts = 10_000;

function limitIn(is: DimensionName, text: string | number | undefined, unit: UnitCode): Decimal | undefined {
  if (text === undefined) return undefined;
  return text === 0 && is !== "temperature" ? new Decimal(0) : toDecimal(fromBase(amountOf(writtenQuantity(is, text, "limit")), unit));
}

/** The number of a share of the range; by its logarithm where the range is wide. */
function between(low: Decimal, high: Decimal, share: number): Decimal {
  if (share === 0) return low;
  if (share === parts) return high;
  const part = new Decimal(share).div(parts);
  const start = low.lte(0) && high.gt(1000) ? least : low;
  return start.gt(0) && high.div(start).gt(50) ? start.times(high.div(start).pow(part)) : start.plus(high.minus(start).times(part));
}

/** The limits of an input, whatever its dimension: the compiler need not know which unit goes with which. */
type Limited = { readonly is: DimensionName; readonly whole?: boolean } & Readonly<Partial<Record<"above" | "atLeast" | "below" | "atMost", string | number>>>;

function quantityArbitrary(row: Limited): fc.Arbitrary<unknown> {
  const units = unitsOf(row.is) as readonly UnitCode[];
  return fc.record({ unit: fc.constantFrom(...units), share: fc.oneof({ weight: 6, arbitrary: fc.integer({ min: 0, max: parts }) }, fc.constantFrom(0, 1, parts - 1, parts)), asPair: fc.boolean() }).map(({ unit, share, asPair }) => {
    const usual = row.is === "temperature" ? ([new Decimal(-40), new Decimal(200)] as const) : ([least, most] as const);
    const low = limitIn(row.is, row.above ?? row.atLeast, unit) ?? usual[0];
    const high = limitIn(row.is, row.below ?? row.atMost, unit) ?? Decimal.max(usual[1], low.times(1000));
    const number = between(low, high, share);
    const whole = row.is === "count" && row.whole === true;
    const text = (whole ? number.round() : number.toSignificantDigits(8)).toString();
    const symbol = unitSymbol(unit);
    return asPair && symbol !== "" ? { value: text, unit: symbol } : `${text} ${symbol}`.trim();
  });
}

function entryArbitrary(row: EntryDefinition): fc.Arbitrary<unknown> {
  return "oneOf" in row ? fc.constantFrom(...row.oneOf) : quantityArbitrary(row);
}

/** Inputs for rows: one of each pair, and what may be left out left out at times. */
export function inputArbitrary(entries: Entries): fc.Arbitrary<Given> {
  const choices = choicesOf({ given: entries } as never);
  return fc.oneof(...choices.map((chosen) => {
    const wanted = Object.entries(entries).filter(([name, { either }]) => either === undefined || chosen.includes(name));
    const needed = wanted.filter(([, row]) => row.default === undefined && row.optional !== true).map(([name]) => name);
    return fc.record(Object.fromEntries(wanted.map(([name, row]) => [name, entryArbitrary(row)])), { requiredKeys: needed }).map((given): Given => ({ ...given }));
  }));
}
