import { exact, exactArithmetic, isExact, isZero, sign } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import type { Code } from "./flat-program.js";
import { curveReal, powerReal } from "./function-kernels.js";
import { align, type Buffers, type Fixed, nearestDouble, type Operand, type Quotient, type Real, type Whole, wholeParts } from "./operands.js";
import { blendReal, divideReal, extremeReal, multiplyReal } from "./real-kernels.js";
import { blendWhole, divideWhole, largerWhole, markNought, mostWhole, multiplyWhole, smallerWhole, unitRoundoff } from "./whole-kernels.js";

/** One instruction of a plan: works on the first rows of its buffers. */
export type Instruction = (count: number) => void;

type Varied = Exclude<Operand, Fixed>;

/** Plans arithmetic: the fewest instructions that give a result, exact for as long as the numbers stay small enough. */
export class Operations {
  readonly buffers: Buffers;
  readonly add: (instruction: Instruction) => void;
  /** Rows that are left to the exact way. */
  readonly marks: Uint8Array;
  readonly #divided = new Map<Quotient, Real>();

  constructor(buffers: Buffers, marks: Uint8Array, add: (instruction: Instruction) => void) {
    this.buffers = buffers;
    this.marks = marks;
    this.add = add;
  }

  /** Plans an operation that is no rounding. */
  apply(code: Exclude<Code, "ceil" | "floor" | "round">, a: Operand, b: Operand): Operand {
    if (a.kind === "fixed" && b.kind === "fixed") return { kind: "fixed", amount: exactArithmetic[code](a.amount, b.amount) };
    switch (code) {
      case "multiply":
        return this.#product(a, b);
      case "divide":
        return this.#quotient(a, b);
      case "add":
        return this.#blend(a, b, 1);
      case "subtract":
        return this.#blend(a, b, -1);
      case "negate":
        return this.#blend({ kind: "fixed", amount: exact(0n) }, a, -1);
      case "min":
        return this.#extreme(a, b, -1);
      case "max":
        return this.#extreme(a, b, 1);
      case "power":
        return this.#power(a, b as Fixed);
      default: {
        const argument = this.plain(this.varied(a));
        return this.#real(exact(1n), (out, count) => {
          curveReal(code, out, argument, count);
        });
      }
    }
  }

  /** An operand with a number for each row. */
  varied(operand: Operand): Varied {
    return operand.kind === "fixed" ? this.buffers.spread(operand) : operand;
  }

  /** A whole number as a quotient over 1. */
  asQuotient(operand: Whole | Quotient): Quotient {
    return operand.kind === "quotient" ? operand : { kind: "quotient", above: operand, below: this.buffers.one };
  }

  /** An operand as doubles; a quotient is worked out. */
  worked(operand: Varied): Whole | Real {
    if (operand.kind !== "quotient") return operand;
    const known = this.#divided.get(operand);
    if (known !== undefined) return known;
    const { above, below } = operand;
    const [p, r, scale] = quotientParts(operand);
    const real = this.#real(scale, (out, count) => {
      divideWhole(out.values, out.errors, above.values, p, below.values, r, count);
    });
    this.#divided.set(operand, real);
    return real;
  }

  /** An operand as doubles with nothing left in its scale. */
  plain(operand: Varied): Whole | Real {
    const worked = this.worked(operand);
    if (worked.scale.equals(exact(1n))) return worked;
    const by = nearestDouble(worked.scale);
    const none = this.buffers.whole(exact(1n), 0);
    return this.#real(exact(1n), (out, count) => {
      blendReal(out, worked, by, none, 1, 4 * unitRoundoff, count);
    });
  }

  #real(scale: Fraction, run: (out: Real, count: number) => void): Real {
    const out = this.buffers.real(scale);
    this.add((count) => {
      run(out, count);
    });
    return out;
  }

  #whole(scale: Fraction, most: number, run: (out: Float64Array, count: number) => void): Whole {
    const out = this.buffers.whole(scale, most);
    this.add((count) => {
      run(out.values, count);
    });
    return out;
  }

  #product(a: Operand, b: Operand): Operand {
    if (a.kind === "fixed" && isExact(a.amount)) return this.#scaled(b, a.amount);
    if (b.kind === "fixed" && isExact(b.amount)) return this.#scaled(a, b.amount);
    const [left, right] = [this.varied(a), this.varied(b)];
    if (left.kind !== "real" && right.kind !== "real") {
      const above = this.#wholeProduct(aboveOf(left), aboveOf(right));
      const below = this.#wholeProduct(belowOf(left), belowOf(right));
      if (above !== undefined && below !== undefined) return quotientOf(above, below);
    }
    const [x, y] = [this.worked(left), this.worked(right)];
    return this.#real(x.scale.mul(y.scale), (out, count) => {
      multiplyReal(out, x, y, count);
    });
  }

  /** The product of whole numbers, where it is small enough; nothing stands for 1. */
  #wholeProduct(a: Whole | undefined, b: Whole | undefined): Whole | "one" | undefined {
    if (a === undefined || b === undefined) return a ?? b ?? "one";
    if (a.most * b.most > mostWhole) return undefined;
    return this.#whole(a.scale.mul(b.scale), a.most * b.most, (out, count) => {
      multiplyWhole(out, a.values, b.values, count);
    });
  }

  /** Times a number that is the same in all rows: only the scale changes, and the sign. */
  #scaled(operand: Operand, by: Fraction): Operand {
    if (operand.kind === "fixed") return { kind: "fixed", amount: exactArithmetic.multiply(operand.amount, by) };
    // A double that is none stays none.
    if (isZero(by)) return operand.kind === "real" ? this.#product(operand, this.buffers.spread({ kind: "fixed", amount: by })) : { kind: "fixed", amount: by };
    if (sign(by) < 0) return this.#blend({ kind: "fixed", amount: exact(0n) }, this.#scaled(operand, by.neg()), -1);
    if (operand.kind === "quotient") return { ...operand, above: { ...operand.above, scale: operand.above.scale.mul(by) } };
    return { ...operand, scale: operand.scale.mul(by) };
  }

  #quotient(a: Operand, b: Operand): Operand {
    if (b.kind === "fixed" && isExact(b.amount) && !isZero(b.amount)) return this.#scaled(a, exact(1n).div(b.amount));
    const [left, right] = [this.varied(a), this.varied(b)];
    if (left.kind !== "real" && right.kind !== "real") {
      const above = this.#wholeProduct(aboveOf(left), belowOf(right));
      const divisor = aboveOf(right);
      const below = this.#wholeProduct(belowOf(left), divisor);
      if (above !== undefined && below !== undefined) {
        this.add((count) => {
          markNought(this.marks, divisor.values, count);
        });
        return quotientOf(above, below);
      }
    }
    const [x, y] = [this.worked(left), this.worked(right)];
    return this.#real(x.scale.div(y.scale), (out, count) => {
      divideReal(out, x, y, count);
    });
  }

  #blend(a: Operand, b: Operand, way: 1 | -1): Operand {
    if (b.kind === "fixed" && isZero(b.amount)) return a;
    const [left, right] = [this.varied(a), this.varied(b)];
    if (left.kind !== "real" && right.kind !== "real") {
      const [below, otherBelow] = [belowOf(left), belowOf(right)];
      const same = below?.values === otherBelow?.values && below?.scale === otherBelow?.scale;
      const above = this.#wholeProduct(aboveOf(left), same ? undefined : otherBelow);
      const otherAbove = this.#wholeProduct(aboveOf(right), same ? undefined : below);
      const under = same ? (below ?? "one") : this.#wholeProduct(below, otherBelow);
      const sum = isWhole(above) && isWhole(otherAbove) ? this.#wholeSum(above, otherAbove, way) : undefined;
      if (sum !== undefined && under !== undefined) return quotientOf(sum, under);
    }
    const [x, y] = [this.worked(left), this.worked(right)];
    const { p, r, scale, inexact } = align(x, y);
    return this.#real(scale, (out, count) => {
      blendReal(out, x, p, y, r * way, inexact, count);
    });
  }

  #wholeSum(a: Whole, b: Whole, way: 1 | -1): Whole | undefined {
    const { p, r, scale, whole } = align(a, b);
    const most = a.most * p + b.most * r;
    if (!whole || most > mostWhole) return undefined;
    return this.#whole(scale, most, (out, count) => {
      blendWhole(out, a.values, p, b.values, r * way, count);
    });
  }

  #extreme(a: Operand, b: Operand, pick: 1 | -1): Operand {
    if (a === b) return a;
    const [x, y] = [this.worked(this.varied(a)), this.worked(this.varied(b))];
    const { p, r, scale, inexact, whole } = align(x, y);
    const most = x.kind === "whole" && y.kind === "whole" && whole ? Math.max(x.most * p, y.most * r) : Infinity;
    const kernel = pick > 0 ? largerWhole : smallerWhole;
    if (most <= mostWhole) {
      return this.#whole(scale, most, (out, count) => {
        kernel(out, x.values, p, y.values, r, count);
      });
    }
    return this.#real(scale, (out, count) => {
      extremeReal(out, x, p, y, r, inexact, pick, count);
    });
  }

  #power(base: Operand, { amount }: Fixed): Operand {
    const times = nearestDouble(amount);
    if (!isExact(amount) || !amount.isWhole() || Math.abs(times) > 16) {
      const argument = this.plain(this.varied(base));
      return this.#real(exact(1n), (out, count) => {
        powerReal(out, argument, times, count);
      });
    }
    let result: Operand = { kind: "fixed", amount: exact(1n) };
    for (let factor = 0; factor < Math.abs(times); factor += 1) result = this.#product(result, base);
    return times < 0 ? this.#quotient({ kind: "fixed", amount: exact(1n) }, result) : result;
  }
}

const aboveOf = (operand: Whole | Quotient): Whole => (operand.kind === "quotient" ? operand.above : operand);
const belowOf = (operand: Whole | Quotient): Whole | undefined => (operand.kind === "quotient" ? operand.below : undefined);
const isWhole = (operand: Whole | "one" | undefined): operand is Whole => typeof operand === "object";

function quotientOf(above: Whole | "one", below: Whole | "one"): Whole | Quotient {
  if (above === "one") throw new Error("nothing is above");
  return below === "one" ? above : { kind: "quotient", above, below };
}

/** A quotient as `(a * p) / (b * r)` in whole numbers, and what scale then remains: 1 where the numbers stay small enough. */
export function quotientParts({ above, below }: Quotient, of: Fraction = exact(1n)): readonly [p: number, r: number, scale: Fraction] {
  const ratio = above.scale.div(below.scale).div(of);
  const [p, r] = wholeParts(ratio) ?? [Infinity, Infinity];
  return above.most * p <= mostWhole && below.most * r <= mostWhole ? [p, r, exact(1n)] : [1, 1, ratio];
}
