import configureMeasurements from "convert-units";
import { type Amount, exact, exactArithmetic as arithmetic, isZero } from "../core/amount.js";
import { allUnits } from "../core/units.js";
import { unitScale } from "../core/unit-scale.js";
import { unitName } from "./unit-names.js";

/** Our arithmetic as convert-units asks for it; the only bare numbers it hands over are its own whole ones. */
const wrapper = {
  create: (amount: unknown) => exactly(amount),
  add: (a: unknown, b: unknown) => arithmetic.add(exactly(a), exactly(b)),
  sub: (a: unknown, b: unknown) => arithmetic.subtract(exactly(a), exactly(b)),
  mul: (a: unknown, b: unknown) => arithmetic.multiply(exactly(a), exactly(b)),
  div: (a: unknown, b: unknown) => arithmetic.divide(exactly(a), exactly(b)),
  lt: (a: unknown, b: unknown) => arithmetic.compare(exactly(a), exactly(b)) < 0,
  lte: (a: unknown, b: unknown) => arithmetic.compare(exactly(a), exactly(b)) <= 0,
  gt: (a: unknown, b: unknown) => arithmetic.compare(exactly(a), exactly(b)) > 0,
  gte: (a: unknown, b: unknown) => arithmetic.compare(exactly(a), exactly(b)) >= 0,
};

function exactly(amount: unknown): Amount {
  return typeof amount === "number" ? exact(BigInt(amount)) : (amount as Amount);
}

type Measures = Parameters<typeof configureMeasurements>[0];
type Configured = ReturnType<typeof configureMeasurements<string, string, string, Amount>>;

/** Our table as measures of convert-units: each dimension a measure, its systems anchored to each other one to one. */
function measures(): Measures {
  const systems = ["us", "si", "both"];
  const table: Record<string, { systems: Record<string, Record<string, object>>; anchors: object }> = {};
  const anchors = Object.fromEntries(systems.map((from) => [from, Object.fromEntries(systems.map((to) => [to, { ratio: 1 }]))]));
  for (const { code, of, system } of allUnits()) {
    const measure = (table[of] ??= { systems: {}, anchors });
    const { size, zero } = unitScale(code);
    const shift = isZero(zero) ? {} : { anchor_shift: arithmetic.negate(zero) };
    (measure.systems[system] ??= {})[code] = { name: unitName(code), to_anchor: size, ...shift };
  }
  // It takes factors as numbers and texts, and hands them to the wrapper as they stand: so exact amounts go through unchanged.
  return table as unknown as Measures;
}

let configured: Configured | undefined;

/** convert-units over our table; with an amount to be converted, or for its lists alone. */
export function converter(amount: Amount = exact(0n)): ReturnType<Configured> {
  configured ??= configureMeasurements<string, string, string, Amount>(measures(), wrapper as never);
  return configured(amount as unknown as number);
}
