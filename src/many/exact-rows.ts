import { type Amount, exact, exactArithmetic, isExact, NoValue } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import { apply, type Code, type FlatProgram } from "./flat-program.js";
import type { Operand, Whole } from "./operands.js";

/** What takes more than exact fractions: roots, logarithms, numbers that have outgrown their limit. */
class BeyondFractions extends Error {}

/** What is never exact, and not worth working out here. */
const inexact: readonly Code[] = ["sqrt", "ln", "log10", "exp", "sin", "asin"];

/** An amount that has to be exact. */
export function exactly(amount: Amount): Fraction {
  if (!isExact(amount)) throw new BeyondFractions();
  return amount;
}

/** What can be worked out in exact fractions, or nothing. */
export function ifExact<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof BeyondFractions || error instanceof NoValue) return undefined;
    throw error;
  }
}

/**
 * Works out a slot of one row exactly, inside {@link ifExact}. What the block holds as whole numbers, such as a count that
 * was rounded before, is exact already: only what lies between is worked out again. `input` gives the amount of an input
 * that is held as a double.
 */
export function exactSlot({ slots }: FlatProgram, operands: readonly Operand[], slot: number, row: number, input: (name: string) => Fraction): Fraction {
  const known: (Fraction | undefined)[] = [];
  const held = (operand: Operand | undefined): Fraction | undefined => {
    if (operand?.kind === "fixed") return exactly(operand.amount);
    if (operand?.kind === "quotient") return exactly(exactArithmetic.divide(wholeAt(operand.above, row), wholeAt(operand.below, row)));
    return operand?.kind === "whole" ? wholeAt(operand, row) : undefined;
  };
  const workedOut = (place: number): Fraction => {
    const here = slots[place];
    if (here?.kind === "name") return input(here.name);
    if (here?.kind !== "operation") throw new Error(`slot ${String(place)} has no value`);
    if (inexact.includes(here.code)) throw new BeyondFractions();
    return exactly(apply<Amount>(here.code, at(here.left), here.left === here.right ? undefined : at(here.right), exactArithmetic));
  };
  // A rounding that is asked for has nothing in the block yet.
  const at = (place: number): Fraction => (known[place] ??= (place === slot && slots[place]?.kind === "operation" ? undefined : held(operands[place])) ?? workedOut(place));
  return at(slot);
}

/** What a row of whole numbers stands for. */
export function wholeAt({ values, scale }: Pick<Whole, "values" | "scale">, row: number): Fraction {
  return scale.mul(exact(BigInt(values[row] as number)));
}

const double = 2n ** 53n;

/** A fraction as a double: within two units of roundoff. */
export function fractionNumber({ numerator, denominator }: Fraction): number {
  const size = numerator < 0n ? -numerator : numerator;
  if (size < double && denominator < double) return Number(numerator) / Number(denominator);
  // Enough bits that the quotient has 60 and more.
  const shift = Math.max(0, bits(denominator) - bits(size) + 64);
  if (shift > 1000) throw new BeyondFractions();
  return Number((numerator << BigInt(shift)) / denominator) / 2 ** shift;
}

function bits(whole: bigint): number {
  return whole.toString(16).length * 4;
}
