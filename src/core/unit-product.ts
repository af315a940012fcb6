import { type Amount, exact, exactArithmetic as arithmetic } from "./amount.js";
import { dimensions, type Powers } from "./dimensions.js";
import { unitScale } from "./unit-scale.js";
import { findRow, type UnitCode, unitDimension, unitParts, unitQuotient, unitSymbol } from "./units.js";

/** A product of powers of units: `{ lb: 1, ft: -3 }` for lb/ft3. Bare numbers and angles have none. */
export type UnitProduct = ReadonlyMap<UnitCode, number>;

/** No unit at all. */
export const noUnits: UnitProduct = new Map();

/** A unit as a product of simpler ones: `psf` as lbf/ft2, `/ft2` as ft^-2; `mph` and `gal` are as simple as they get. */
export function unitProduct(code: UnitCode): UnitProduct {
  const of = unitDimension(code);
  if (of === "ratio" || of === "count" || of === "angle") return noUnits;
  const quotient = unitQuotient(code);
  if (quotient === undefined) return new Map([[code, 1]]);
  const product = new Map<UnitCode, number>();
  for (const { name, power } of unitParts(quotient)) {
    const part = findRow(name);
    // A part that is no unit of the table leaves the whole as one word; a bare number adds nothing.
    if (part === undefined) return new Map([[code, 1]]);
    if (part.of !== "ratio" && part.of !== "count") product.set(part.code, (product.get(part.code) ?? 0) + power);
  }
  return withoutNoughts(product);
}

function withoutNoughts(product: Map<UnitCode, number>): UnitProduct {
  for (const [code, power] of product) if (Math.abs(power) < 1e-9) product.delete(code);
  return product;
}

/** The product of two products, the second raised to a power. */
export function timesUnits(a: UnitProduct, b: UnitProduct, power = 1): UnitProduct {
  const product = new Map(a);
  for (const [code, own] of b) product.set(code, (product.get(code) ?? 0) + own * power);
  return withoutNoughts(product);
}

/** The size of a product of units in base units. */
export function productSize(product: UnitProduct): Amount {
  return [...product].reduce<Amount>((size, [code, power]) => arithmetic.multiply(size, powerOf(unitScale(code).size, power)), exact(1n));
}

function powerOf(size: Amount, power: number): Amount {
  // Powers come from the formulas' own literals; a millionth is finer than any of them.
  return arithmetic.power(size, Number.isInteger(power) ? exact(BigInt(power)) : exact(BigInt(Math.round(power * 1e6)), 1000000n));
}

/** How a product is written: `ft2`, `lb/ft3`, `/in2`. */
export function productText(product: UnitProduct): string {
  const word = (code: UnitCode, power: number): string => `${unitSymbol(code)}${power === 1 ? "" : String(Number(power.toFixed(3)))}`;
  const above = [...product].filter(([, power]) => power > 0).map(([code, power]) => word(code, power));
  const below = [...product].filter(([, power]) => power < 0).map(([code, power]) => `/${word(code, -power)}`);
  return above.join(" ") + below.join("");
}

/** Whether two products are the same. */
export function sameUnits(a: UnitProduct, b: UnitProduct): boolean {
  return a.size === b.size && [...a].every(([code, power]) => Math.abs((b.get(code) ?? 0) - power) < 1e-9);
}

/** The powers of length, mass, time, temperature, money and labour of a unit. */
export function unitPowers(code: UnitCode): Powers {
  return dimensions[unitDimension(code)];
}
