import { type Amount, amountText, type Arithmetic, type Decimal, exact, exactArithmetic, isExact, isZero, readDigits } from "../core/amount.js";
import { isOpen, OpenAmount } from "../core/open-amount.js";
import type { Limited } from "../core/limits.js";
import { areWithin, type Edge, type Edges, edgesOf } from "./edges.js";
import type { Code, Slot } from "./flat-program.js";

/** What a trace cannot follow; rows like that one are worked out one by one. */
export class Untraceable extends Error {}

/** The range that a slot must lie in for the trace to hold for a row. */
export interface Guard {
  readonly slot: number;
  readonly limits: Edges;
}

/** An amount that differs from row to row: the slot that works it out, and what it is in the row that was traced. */
export class TracedAmount extends OpenAmount {
  constructor(
    readonly trace: Trace,
    readonly slot: number,
    readonly sample: Amount,
  ) {
    super(trace.arithmetic);
  }

  keeps(row: Limited): boolean {
    this.trace.within(asAmount(this), edgesOf(row, row.is));
    return true;
  }

  // The engine asks these of what is no fraction, where it reads limits.

  /** Which of two is more. */
  cmp(other: Decimal): number {
    if (other.precision() > 30) throw new Untraceable();
    return this.trace.arithmetic.compare(asAmount(this), readDigits(other.toFixed()));
  }

  /** Whether it is nought. */
  isZero(): boolean {
    return this.s === 0;
  }

  /** Its sign. */
  get s(): number {
    return this.trace.arithmetic.compare(asAmount(this), nought);
  }
}

const [nought, one] = [exact(0n), exact(1n)];

/** For the engine, an amount is an amount. */
function asAmount(traced: TracedAmount): Amount {
  return traced as unknown as Amount;
}

/** An amount as one that was traced, where it is one. */
export function tracedIn(amount: Amount): TracedAmount | undefined {
  return (amount as unknown) instanceof TracedAmount ? (amount as unknown as TracedAmount) : undefined;
}

/** What an amount is in the row that was traced. */
function sampleOf(amount: Amount): Amount {
  return tracedIn(amount)?.sample ?? amount;
}

/**
 * Follows what is worked out for one row, so that other rows can be worked out the same way: every operation on what
 * differs from row to row becomes a slot, and every comparison that the way depended on becomes a guard.
 */
export class Trace {
  readonly slots: Slot[] = [];
  /** The numbers that are the same in all rows, by the name of their slot. */
  readonly fixed = new Map<string, Amount>();
  readonly guards = new Map<string, Guard>();
  readonly arithmetic: Arithmetic<Amount>;
  readonly #places = new Map<string, number>();

  constructor() {
    const of =
      (code: Code) =>
      (a: Amount, b: Amount = a): Amount =>
        isOpen(a) || isOpen(b) ? this.#operation(code, a, b) : exactArithmetic[code](a, b);
    this.arithmetic = {
      literal: exactArithmetic.literal,
      compare: (a, b) => (isOpen(a) || isOpen(b) ? this.#order(a, b) : exactArithmetic.compare(a, b)),
      add: (a, b) => (addsNothing(a, b) ? b : addsNothing(b, a) ? a : of("add")(a, b)),
      subtract: (a, b) => (addsNothing(b, a) ? a : this.#areSame(a, b) ? exactArithmetic.subtract(sampleOf(a), sampleOf(b)) : of("subtract")(a, b)),
      multiply: (a, b) => (isOne(a) ? b : isOne(b) ? a : isNought(a) || isNought(b) ? exactArithmetic.multiply(sampleOf(a), sampleOf(b)) : of("multiply")(a, b)),
      divide: (a, b) => (isOne(b) ? a : of("divide")(a, b)),
      negate: of("negate"), power: of("power"), min: of("min"), max: of("max"), ceil: of("ceil"), floor: of("floor"), round: of("round"),
      sqrt: of("sqrt"), ln: of("ln"), log10: of("log10"), exp: of("exp"), sin: of("sin"), asin: of("asin"),
    };
  }

  /** An amount that rows bring, and what it is in the row that is traced. */
  input(name: string, sample: Amount): Amount {
    return asAmount(new TracedAmount(this, this.#place(`name ${name}`, { kind: "name", name }), sample));
  }

  /** Sees to it that an amount is within limits, in the row that is traced and in those that follow it. */
  within(amount: Amount, limits: Edges): void {
    if (!areWithin(limits, sampleOf(amount))) throw new Untraceable();
    const slot = tracedIn(amount)?.slot;
    if (slot === undefined) return;
    for (const edge of limits.edges) this.#guard(slot, edge);
    if (limits.whole) this.guards.set(`${String(slot)} whole`, { slot, limits: { edges: [], whole: true } });
  }

  #guard(slot: number, edge: Edge): void {
    const key = (met: boolean): string => `${String(slot)} ${String(edge.low)} ${String(met)} ${amountText(edge.amount)}`;
    // What is above an edge is not below it.
    if (edge.met && this.guards.has(key(false))) return;
    this.guards.delete(key(true));
    this.guards.set(key(edge.met), { slot, limits: { edges: [edge], whole: false } });
  }

  /** Which of two is more; the trace then holds for rows in which it is the same one. */
  #order(a: Amount, b: Amount): number {
    if (this.#areSame(a, b)) return 0;
    const order = exactArithmetic.compare(sampleOf(a), sampleOf(b));
    const [left, right] = [tracedIn(a), tracedIn(b)];
    if (order === 0 && left !== undefined && right !== undefined && this.#places.get(`floor ${String(left.slot)} ${String(left.slot)}`) === right.slot) {
      this.within(a, { edges: [], whole: true });
      return 0;
    }
    // What is held against a number that is the same in all rows needs no difference.
    const held = left !== undefined && right === undefined ? left : tracedIn(this.#operation("subtract", a, b));
    if (held === undefined) throw new Untraceable();
    const amount = held === left ? b : nought;
    if (order === 0) for (const low of [true, false]) this.#guard(held.slot, { amount, low, met: true });
    else this.#guard(held.slot, { amount, low: order > 0, met: false });
    return order;
  }

  #areSame(a: Amount, b: Amount): boolean {
    const [left, right] = [tracedIn(a), tracedIn(b)];
    return left !== undefined && left.slot === right?.slot;
  }

  #operation(code: Code, a: Amount, b: Amount): Amount {
    const [left, right] = [this.#slotOf(a), this.#slotOf(b)];
    const sample = exactArithmetic[code](sampleOf(a), sampleOf(b));
    return asAmount(new TracedAmount(this, this.#place(`${code} ${String(left)} ${String(right)}`, { kind: "operation", code, left, right }), sample));
  }

  #slotOf(amount: Amount): number {
    const traced = tracedIn(amount);
    if (traced !== undefined) {
      if (traced.trace !== this) throw new Untraceable();
      return traced.slot;
    }
    const name = `${isExact(amount) ? "=" : "~"}${isExact(amount) ? amountText(amount) : amount.toString()}`;
    this.fixed.set(name, amount);
    return this.#place(name, { kind: "name", name });
  }

  #place(key: string, slot: Slot): number {
    const known = this.#places.get(key);
    if (known !== undefined) return known;
    this.#places.set(key, this.slots.length);
    return this.slots.push(slot) - 1;
  }
}

const isNought = (amount: Amount): boolean => !isOpen(amount) && isZero(amount);
const isOne = (amount: Amount): boolean => !isOpen(amount) && isExact(amount) && amount.equals(one);
/** Whether what is added changes nothing, not even whether the sum is exact. */
const addsNothing = (amount: Amount, to: Amount): boolean => isNought(amount) && (isExact(amount) || !isExact(sampleOf(to)));
