import { type Amount, amountText, type Decimal, isExact, toDecimal } from "./amount.js";
import type { DimensionName } from "./dimensions.js";
import { fromBase } from "./unit-scale.js";
import { findUnit, type SpellingOf, type UnitCode, unitsOf, unitSymbol } from "./units.js";

/** What {@link Quantity.toJSON} gives: it reads back as the same quantity. */
export interface QuantityJson {
  readonly value: string;
  readonly unit: string;
}

/**
 * A number with its dimension: a `Quantity<"length">` is no `Quantity<"area">`. It is frozen, keeps its amount to
 * itself, and gives it in the unit you ask for.
 */
export class Quantity<D extends DimensionName = DimensionName> {
  /** The dimension by name. */
  readonly dimension: D;
  /** The unit in which the quantity was given, or is shown unless another is asked for. */
  readonly unit: UnitCode;
  readonly #amount: Amount;

  /** @internal */
  constructor(dimension: D, amount: Amount, unit: UnitCode) {
    this.dimension = dimension;
    this.unit = unit;
    this.#amount = amount;
    Object.freeze(this);
  }

  /**
   * The number in a unit; a dimension with one unit (a count) needs none, and without one you get the unit it is shown in.
   *
   * @throws RangeError if the text is no unit of this dimension
   */
  to(unit?: SpellingOf<D>): Decimal {
    const amount = this.#in(unit);
    // Of an approximate number the last of 40 digits are lost to rounding: 60 deg comes back as 60.
    return isExact(amount) ? toDecimal(amount) : amount.toSignificantDigits(36);
  }

  /** Like {@link Quantity.to}, as a JavaScript number: the nearest one, for drawing and plotting. */
  toNumber(unit?: SpellingOf<D>): number {
    return this.to(unit).toNumber();
  }

  /** The number to 10 significant digits with its unit: `"0.375 in"`. */
  toString(): string {
    const symbol = unitSymbol(this.unit);
    return `${toDecimal(this.#in()).toSignificantDigits(10).toString()}${symbol === "" ? "" : ` ${symbol}`}`;
  }

  /** The exact value as text, with its unit; it reads back equal. */
  toJSON(): QuantityJson {
    return { value: amountText(this.#in()), unit: unitSymbol(this.unit) };
  }

  #in(unit?: string): Amount {
    const code = unit === undefined ? this.unit : findUnit(this.dimension, unit);
    if (code === undefined) {
      throw new RangeError(`"${String(unit)}" is no unit of ${this.dimension}; there are ${unitsOf(this.dimension).map(unitSymbol).join(", ")}`);
    }
    return fromBase(this.#amount, code);
  }

  /**
   * The amount in base units; for the engine.
   *
   * @internal
   */
  static readonly amountOf = (quantity: Quantity): Amount => quantity.#amount;

  /** Whether a value is a quantity of this copy of the package. */
  static readonly is = (value: unknown): value is Quantity => typeof value === "object" && value !== null && #amount in value;
}

/** Makes a quantity from an amount in base units, shown in a unit. */
export function makeQuantity<D extends DimensionName>(dimension: D, amount: Amount, unit: UnitCode): Quantity<D> {
  return new Quantity(dimension, amount, unit);
}

/** The amount of a quantity in base units. */
export const amountOf: (quantity: Quantity) => Amount = Quantity.amountOf;

/** The amount of a quantity in a unit. */
export function amountIn(quantity: Quantity, unit: UnitCode): Amount {
  return fromBase(amountOf(quantity), unit);
}

/**
 * Whether a value is a quantity.
 *
 * @example
 * ```ts
 * isQuantity(quantity("length", "3/8 in")); // true
 * isQuantity("3/8 in"); // false
 * ```
 */
export const isQuantity: (value: unknown) => value is Quantity = Quantity.is;

/** Whether the number is exact, and so is printed with an equals sign. */
export function isExactQuantity(quantity: Quantity): boolean {
  return isExact(amountOf(quantity));
}
