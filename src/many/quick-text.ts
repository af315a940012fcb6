import type { DimensionName } from "../core/dimensions.js";
import { readQuantity } from "../core/read-quantity.js";
import { findUnit, type UnitCode } from "../core/units.js";

/** Reads the usual texts of one input: `312 ft2`, `3/8 in`, `1-5/8 in`, `5%`. What it does not know, the full reader takes. */
export interface QuickReader {
  /** Reads a text; false where it is none of these. The number and the unit are then in the two below. */
  readonly read: (text: string) => boolean;
  number: number;
  unit: UnitCode;
}

const powersOfTen = Array.from({ length: 16 }, (_, power) => 10 ** power);
const longest = 80;
const mostDigits = 15;

/** Makes the quick reader of an input. Its numbers are the doubles nearest to what is written, and read back as that. */
export function quickReader(dimension: DimensionName): QuickReader {
  const bare = dimension === "ratio" || dimension === "count";
  const units = new Map<string, UnitCode | undefined>(bare ? [["", dimension]] : []);
  let [lastText, lastUnit]: [string, UnitCode | undefined] = ["", undefined];
  /** The unit spelt from this place on; most texts of an input spell the same one. */
  const unitFrom = (text: string, at: number): UnitCode | undefined => {
    if (lastUnit !== undefined && text.length - at === lastText.length && text.endsWith(lastText)) return lastUnit;
    const spelt = text.slice(at).trim();
    if (!units.has(spelt)) {
      if (units.size > 200) units.clear();
      units.set(spelt, spelt === "" && !bare ? undefined : findUnit(dimension, spelt));
    }
    [lastText, lastUnit] = [text.slice(at), units.get(spelt)];
    return lastUnit;
  };
  const reader: QuickReader = {
    number: 0,
    unit: bare ? dimension : ("" as UnitCode),
    read(text) {
      if (text.length > longest) return false;
      const negative = text.charCodeAt(0) === minus;
      const start = negative ? 1 : 0;
      let at = start;
      let number = 0;
      for (let digit = digitAt(text, at); digit >= 0; digit = digitAt(text, (at += 1))) number = number * 10 + digit;
      let digits = at - start;
      if (digits === 0) return false;
      const next = text.charCodeAt(at);
      if (next === point) {
        const from = (at += 1);
        for (let digit = digitAt(text, at); digit >= 0; digit = digitAt(text, (at += 1))) number = number * 10 + digit;
        digits += at - from;
        if (digits > mostDigits) return false;
        number /= powersOfTen[at - from] as number;
      } else {
        const fraction = next === slash ? start : (next === minus || next === blank) && digitAt(text, at + 1) >= 0 ? at + 1 : -1;
        if (fraction >= 0) {
          const whole = fraction === start ? 0 : number;
          let [above, below] = [0, 0];
          at = fraction;
          for (let digit = digitAt(text, at); digit >= 0; digit = digitAt(text, (at += 1))) above = above * 10 + digit;
          if (text.charCodeAt(at) !== slash) return false;
          const from = (at += 1);
          for (let digit = digitAt(text, at); digit >= 0; digit = digitAt(text, (at += 1))) below = below * 10 + digit;
          // Only of what a tape shows is the quotient a double.
          if (at === from || at - start > 9 || ![1, 2, 4, 8, 16, 32, 64].includes(below)) return false;
          number = whole + above / below;
        }
      }
      if (digits > mostDigits) return false;
      const unit = unitFrom(text, at);
      if (unit === undefined) return false;
      reader.number = negative ? -number : number;
      reader.unit = unit;
      return true;
    },
  };
  return reader;
}

const [blank, minus, point, slash] = [32, 45, 46, 47];

/** The digit at a place, below 0 where there is none. */
function digitAt(text: string, at: number): number {
  const digit = text.charCodeAt(at) - 48;
  return digit >= 0 && digit <= 9 ? digit : -1;
}

/** Reads what an input takes, texts above all; false where its number is not one that a double stands for. */
export function readQuickly(reader: QuickReader, dimension: DimensionName, given: unknown): boolean {
  if (typeof given === "string" && reader.read(given)) return true;
  const read = readQuantity(dimension, given, { path: [] });
  if ("code" in read) return false;
  const { value, unit } = read.toJSON();
  return reader.read(unit === "" ? value : `${value} ${unit}`);
}

/** Units that people mix in one column, and how many of the smaller go into them. */
const smaller = new Map<UnitCode, readonly [unit: UnitCode, by: number]>([["ft", ["in", 12]], ["m", ["mm", 1000]], ["cm", ["mm", 10]]]);

/** Brings what was read to the smaller of the units that people mix, where it can be; it stands for the very same amount. */
export function inSmallUnit(reader: QuickReader): void {
  const { number } = reader;
  const small = smaller.get(reader.unit);
  if (small === undefined) return;
  const [unit, by] = small;
  // Of a quotient of a power of two the product is a double; of a decimal the nearest double is the one that its text reads as.
  const product = Number.isInteger(number * 64) && Math.abs(number) < 2 ** 40 ? number * by : decimalTimes(number, by);
  if (product === undefined) return;
  reader.number = product;
  reader.unit = unit;
}

function decimalTimes(number: number, by: number): number | undefined {
  for (const power of [10, 100, 1000, 1e4, 1e5, 1e6]) {
    const whole = Math.round(number * power);
    if (whole / power === number && Math.abs(whole) < 1e9) return (whole * by) / power;
  }
  return undefined;
}
