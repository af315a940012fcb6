import { type Amount, type Decimal, Decimal as OurDecimal, exact, exactArithmetic as arithmetic, readDigits } from "./amount.js";
import type { DimensionName } from "./dimensions.js";
import { InputError, type Path, problem, type ProblemCode, shown, type Trouble } from "./problems.js";
import { isQuantity, makeQuantity, type Quantity } from "./quantity.js";
import { toBase } from "./unit-scale.js";
import { dimensionsSpelt, findUnit, type SpellingOf, type UnitCode, unitsOf, unitSymbol } from "./units.js";

/** A number as people write it: `12`, `1.5e3`, `3/8`, `1-5/8`, `1 5/8`. */
type Numeral = `${number}` | `${number}/${number}` | `${number}-${number}/${number}` | `${number} ${number}/${number}`;

/** Feet and inches: `5 ft 6-3/8 in`, `5' 6-3/8"`, `5'`, `6-3/8"`. */
type FeetInches = `${number} ft ${Numeral} in` | `${number}' ${Numeral}"` | `${number}'-${Numeral}"` | `${Numeral}'` | `${Numeral}"`;

/** The texts that the compiler takes for a dimension; `.try` reads more. */
export type QuantityText<D extends DimensionName> =
  | `${Numeral} ${SpellingOf<D>}`
  | (D extends "length" ? FeetInches : D extends "count" | "ratio" ? Numeral | `${number}%` : never);

/** What is read as a quantity: a text with its unit, `{ value, unit }`, a quantity; a bare number for a ratio or a count. */
export type Readable<D extends DimensionName> =
  | QuantityText<D>
  | Quantity<D>
  | { readonly value: number | string | Decimal; readonly unit: SpellingOf<D> }
  | (D extends "count" | "ratio" ? number : never);

const longest = 80;
/** A quantity writes its exact value, and reads it back: a fraction of 4,096 bits above and below has this many digits. */
const longestExact = 2500;
const largestExponent = 30;

/** What is known of the place where a quantity is read: where it is, what it is, which units to propose. */
export interface Place {
  readonly path: Path;
  readonly says?: string | undefined;
  readonly propose?: readonly string[] | undefined;
}

/** Reads a quantity, or says what is wrong. */
export function readQuantity<D extends DimensionName>(dimension: D, given: unknown, place: Place): Quantity<D> | Trouble {
  const read = (): Quantity<D> | Fault => {
    if (isQuantity(given)) return checkedDimension(dimension, given, place);
    if (typeof given === "string") return readText(dimension, given, place);
    if (typeof given === "number") return readNumber(dimension, given, place);
    if (typeof given === "object" && given !== null) return readObject(dimension, given, place);
    return { code: "wrongKind", wanted: howToWrite(dimension, place) };
  };
  const found = read();
  return "code" in found ? { given: shown(given), ...found, path: place.path, says: place.says } : found;
}

type Fault = Pick<Trouble, "code" | "wanted"> & { readonly given?: string };

/**
 * Makes a quantity from what people write.
 *
 * @param dimension - the dimension by name
 * @param given - a text with its unit, `{ value, unit }`, or a bare number for a ratio or a count
 * @returns the quantity, exact to the last digit given
 * @throws {@link InputError} saying what was given and how to write it
 * @example
 * ```ts
 * quantity("length", "5 ft 6-3/8 in").to("in").toString(); // "66.375"
 * quantity("ratio", "55 %").to().toString(); // "55"
 * ```
 */
export function quantity<D extends DimensionName>(dimension: D, given: Readable<NoInfer<D>>): Quantity<D> {
  const read = readQuantity(dimension, given, { path: [] });
  if ("code" in read) throw new InputError(`quantity of ${dimension}`, [problem(read)]);
  return read;
}

function checkedDimension<D extends DimensionName>(dimension: D, given: Quantity, place: Place): Quantity<D> | Fault {
  if (given.dimension === dimension) return given as Quantity<D>;
  return { code: "wrongDimension", given: `${given.toString()} is ${given.dimension}`, wanted: howToWrite(dimension, place) };
}

function readNumber<D extends DimensionName>(dimension: D, given: number, place: Place): Quantity<D> | Fault {
  if (!Number.isFinite(given)) return { code: "notFinite", wanted: howToWrite(dimension, place) };
  // A double is read by its shortest text: 0.1 is a tenth.
  return readText(dimension, String(given), place);
}

/** Reads `{ value, unit }`, and a quantity of another copy of this package by what it writes of itself. */
function readObject<D extends DimensionName>(dimension: D, given: object, place: Place): Quantity<D> | Fault {
  const written = "dimension" in given && given.dimension === dimension ? writtenBy(given) : given;
  if (typeof written !== "object" || written === null || !("value" in written && "unit" in written)) return { code: "wrongKind", wanted: howToWrite(dimension, place) };
  const { value, unit } = written;
  if (typeof unit !== "string") return { code: "noUnit", wanted: howToWrite(dimension, place) };
  if (typeof value === "number" && !Number.isFinite(value)) return { code: "notFinite", given: String(value), wanted: howToWrite(dimension, place) };
  const text = typeof value === "number" || OurDecimal.isDecimal(value) ? String(value) : value;
  if (typeof text !== "string") return { code: "wrongKind", wanted: howToWrite(dimension, place) };
  const both = `${text} ${unit}`;
  const read = readText(dimension, both, place, longestExact);
  return "code" in read ? { given: shown(both), ...read } : read;
}

/** What a quantity of another copy writes of itself. */
function writtenBy(given: object): unknown {
  return "toJSON" in given && typeof given.toJSON === "function" ? (given as { toJSON(): unknown }).toJSON() : given;
}

const numeral = String.raw`[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?`;
const startsWithNumber = new RegExp(`^(${numeral})`);
const startsWithFraction = /^([+-]?)(?:(\d+)(?:-| ))?(\d+)\/(\d+)/;
const startsWithComma = /^[+-]?\d+,\d/;
const feetInches = /^([+-]?\d+(?:\.\d+)?) ?(?:ft|foot|feet|'|′)[ -]?([^'′]*?) ?(?:in|inch|inches|"|″)$/;

function readText<D extends DimensionName>(dimension: D, given: string, place: Place, mostLetters = longest): Quantity<D> | Fault {
  const wanted = howToWrite(dimension, place);
  if (given.length > mostLetters) return { code: "tooLong", wanted };
  const text = given.trim().replaceAll("−", "-").replace(/[\s ]+/g, " ");
  if (text === "") return { code: "empty", wanted };
  if (startsWithComma.test(text)) return { code: "comma", wanted: `write 1250 or 1.25, without a comma; ${wanted}` };
  if (/^[+-]?(nan|infinity)/i.test(text)) return { code: "notFinite", wanted };
  if (dimension === "length") {
    const both = readFeetInches(text);
    if (typeof both === "string") return { code: both, wanted };
    if (both !== undefined) return makeQuantity(dimension, toBase(both, "in"), "in");
  }
  const number = readNumeral(text);
  if (typeof number === "string") return { code: number, wanted };
  const unit = text.slice(number.length).trim();
  const code = unitNamed(dimension, unit);
  if (code !== undefined) return makeQuantity(dimension, toBase(number.amount, code), code);
  if (unit === "") return { code: "noUnit", wanted };
  if (/^[-/\d.,]/.test(unit) && !/^\/[a-z°]/i.test(unit)) return { code: "notANumber", wanted };
  const [other] = dimensionsSpelt(unit);
  return other === undefined ? { code: "unknownUnit", wanted } : { code: "wrongDimension", given: `${shown(given)} is ${other}`, wanted };
}

/** A ratio and a count may stand without a unit. */
function unitNamed(dimension: DimensionName, unit: string): UnitCode | undefined {
  if (unit !== "") return findUnit(dimension, unit);
  return dimension === "ratio" || dimension === "count" ? dimension : undefined;
}

/** Feet and inches in inches: `5 ft 6-3/8 in`, `5'-6 3/8"`. Nothing where the text is no such thing. */
function readFeetInches(text: string): Amount | ProblemCode | undefined {
  const [, feet, inches] = feetInches.exec(text) ?? [];
  if (feet === undefined || inches === undefined || inches === "") return undefined;
  const rest = readNumeral(inches);
  if (typeof rest === "string") return rest;
  if (rest.length < inches.length || inches.startsWith("-")) return "notANumber";
  const whole = arithmetic.multiply(readDigits(feet), exact(12n));
  return feet.startsWith("-") ? arithmetic.subtract(whole, rest.amount) : arithmetic.add(whole, rest.amount);
}

/** The number a text begins with, and how many letters it takes. A whole part stands only before a fraction. */
function readNumeral(text: string): { readonly amount: Amount; readonly length: number } | ProblemCode {
  const fraction = startsWithFraction.exec(text);
  if (fraction !== null) {
    const [all, sign = "", whole = "0", above = "0", below = "1"] = fraction;
    const denominator = BigInt(below);
    if (denominator === 0n) return "notANumber";
    const amount = exact(BigInt(whole) * denominator + BigInt(above), denominator);
    return { amount: sign === "-" ? amount.neg() : amount, length: all.length };
  }
  const [, digits] = startsWithNumber.exec(text) ?? [];
  if (digits === undefined) return "notANumber";
  const [, exponent = "0"] = digits.toLowerCase().split("e");
  if (Math.abs(Number(exponent)) > largestExponent) return "tooLarge";
  return { amount: readDigits(digits), length: digits.length };
}

/** `write one of in, ft, mm, m`. */
function howToWrite(dimension: DimensionName, place: Place): string {
  if (dimension === "count") return "write a number";
  if (dimension === "ratio") return `write a number or a percentage, such as 0.1 or "10 %"`;
  const symbols = place.propose ?? unitsOf(dimension).map(unitSymbol);
  return `write a number and one of ${[...new Set([...symbols, ...unitsOf(dimension).map(unitSymbol)])].slice(0, 6).join(", ")}`;
}
