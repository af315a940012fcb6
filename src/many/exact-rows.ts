import { isExact } from "../core/amount.js";
import { apply, type FlatProgram } from "./flat-program.js";
import type { Operand, Whole } from "./operands.js";
import { BeyondRatio, type Ratio, ratioArithmetic, ratioOf } from "./ratio.js";

/**
 * Works out a slot of one row exactly. What the block holds as whole numbers, such as a count that was rounded before,
 * is exact already: only what lies between is worked out again. `input` gives the amount of an input that is held as a double.
 *
 * @throws BeyondRatio where it takes more than ratios can do
 */
export function exactSlot({ slots }: FlatProgram, operands: readonly Operand[], slot: number, row: number, input: (name: string) => Ratio): Ratio {
  const known: (Ratio | undefined)[] = [];
  const wholeAt = ({ values, scale }: Whole): Ratio => ({ above: BigInt(values[row] as number) * scale.numerator, below: scale.denominator });
  const held = (operand: Operand | undefined): Ratio | undefined => {
    if (operand?.kind === "fixed") {
      if (!isExact(operand.amount)) throw new BeyondRatio();
      return ratioOf(operand.amount);
    }
    if (operand?.kind === "quotient") return ratioArithmetic.divide(wholeAt(operand.above), wholeAt(operand.below));
    return operand?.kind === "whole" ? wholeAt(operand) : undefined;
  };
  const workedOut = (place: number): Ratio => {
    const here = slots[place];
    if (here?.kind === "name") return input(here.name);
    if (here?.kind !== "operation") throw new Error(`slot ${String(place)} has no value`);
    return apply(here.code, at(here.left), here.left === here.right ? undefined : at(here.right), ratioArithmetic);
  };
  // A rounding that is asked for has nothing in the block yet.
  const at = (place: number): Ratio => (known[place] ??= (place === slot && slots[place]?.kind === "operation" ? undefined : held(operands[place])) ?? workedOut(place));
  return at(slot);
}

const double = 2n ** 53n;

/** A ratio as a double: within two units of roundoff. */
export function ratioNumber({ above, below }: Ratio): number {
  const size = above < 0n ? -above : above;
  if (size < double && below < double) return Number(above) / Number(below);
  // Enough bits that the quotient has 60 and more.
  const shift = Math.max(0, bits(below) - bits(size) + 64);
  if (shift > 1000) throw new BeyondRatio();
  return Number((above << BigInt(shift)) / below) / 2 ** shift;
}

function bits(whole: bigint): number {
  return whole.toString(16).length * 4;
}
