import { type Amount, exact, exactArithmetic as arithmetic, isExact, isZero } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import { unitScale } from "../core/unit-scale.js";
import type { UnitCode } from "../core/units.js";
import { areWithin, type Edge, type Edges, isWithin } from "./edges.js";
import { exactly, fractionNumber, ifExact } from "./exact-rows.js";
import { BeyondPlain, nearestDouble, type Operand, type Quotient, type Real, type Whole, wholeParts } from "./operands.js";
import { type Operations, quotientParts } from "./plan-operations.js";
import { eachLoose, eachNear } from "./real-kernels.js";
import { markOutside, quotientWhole, scaleWhole, unitRoundoff } from "./whole-kernels.js";

/** A step as a plan takes it: its limits, and the unit its numbers are wanted in. */
export interface PlannedStep {
  readonly name: string;
  readonly unit: UnitCode;
  readonly limits: Edges;
}

/** What an answer does where doubles are not enough. */
interface AnswerCare {
  /** The amount of a row worked out exactly, if that can be. */
  readonly exactAt: (row: number) => Fraction | undefined;
  /** A row that is given up. */
  readonly giveUp: (row: number) => void;
}

/** Plans limits: rows outside of them are given up. */
export function planLimits(operations: Operations, limits: Edges, operand: Operand, care: AnswerCare): void {
  if (operand.kind === "fixed") {
    if (!areWithin(limits, operand.amount)) throw new BeyondPlain();
    return;
  }
  for (const edge of limits.edges) planEdge(operations, operand, edge, care);
  if (limits.whole && !(operand.kind === "whole" && operand.scale.isWhole())) planWhole(operations, care);
}

/** Plans the limits of a step, and its numbers in the unit wanted. */
export function planAnswer(operations: Operations, { unit, limits }: PlannedStep, operand: Operand, care: AnswerCare): Float64Array {
  const { size, zero } = unitScale(unit);
  planLimits(operations, limits, operand, care);
  if (operand.kind === "fixed") {
    const number = nearestDouble(arithmetic.divide(arithmetic.subtract(operand.amount, zero), size));
    return new Float64Array(operations.buffers.rows).fill(number);
  }
  const shifted = operations.apply("subtract", operand, { kind: "fixed", amount: zero }) as Exclude<Operand, { readonly kind: "fixed" }>;
  if (isExact(size) && shifted.kind !== "real") return wholeAnswer(operations, shifted, size);
  const answer = realAnswer(operations, operations.worked(shifted), size);
  // A temperature is judged on the whole of its scale.
  const judged = operations.worked(operand);
  operations.add((count) => {
    eachLoose(judged, count, (row) => {
      const number = numberIn(care.exactAt(row), size, zero);
      if (number === undefined) care.giveUp(row);
      else answer[row] = number;
    });
  });
  return answer;
}

/** The numbers of what is exact: the nearest doubles, as a rule. */
function wholeAnswer(operations: Operations, operand: Whole | Quotient, size: Fraction): Float64Array {
  const answer = new Float64Array(operations.buffers.rows);
  const { above, below } = operations.asQuotient(operand);
  const [p, r, left] = quotientParts({ kind: "quotient", above, below }, size);
  const rest = nearestDouble(left);
  if (operand.kind === "whole" && p === r && rest === 1) return above.values;
  operations.add((count) => {
    if (operand.kind === "whole") scaleWhole(answer, above.values, p, r, count);
    else quotientWhole(answer, above.values, p, below.values, r, count);
    if (rest !== 1) for (let i = 0; i < count; i += 1) answer[i] = (answer[i] as number) * rest;
  });
  return answer;
}

function realAnswer(operations: Operations, { values, scale }: Whole | Real, size: Amount): Float64Array {
  const answer = new Float64Array(operations.buffers.rows);
  const by = nearestDouble(arithmetic.divide(scale, size));
  operations.add((count) => {
    for (let i = 0; i < count; i += 1) answer[i] = (values[i] as number) * by + 0;
  });
  return answer;
}

function numberIn(amount: Fraction | undefined, size: Amount, zero: Amount): number | undefined {
  return amount === undefined ? undefined : ifExact(() => fractionNumber(exactly(arithmetic.divide(arithmetic.subtract(amount, zero), size))));
}

/** Plans a step that must be whole where it need not come out so. */
function planWhole(operations: Operations, { exactAt, giveUp }: AnswerCare): void {
  operations.add((count) => {
    for (let row = 0; row < count; row += 1) if (exactAt(row)?.isWhole() !== true) giveUp(row);
  });
}

/** Plans a limit of a step: rows that break it are given up, for the exact way says what is wrong. */
function planEdge(operations: Operations, operand: Whole | Quotient | Real, edge: Edge, { exactAt, giveUp }: AnswerCare): void {
  const { low, met, amount } = edge;
  const worked = operations.worked(operand);
  const at = arithmetic.divide(amount, worked.scale);
  if (worked.kind === "whole" && isExact(at)) {
    const nearest = low ? (met ? at.ceil() : at.floor().add(exact(1n))) : met ? at.floor() : at.ceil().sub(exact(1n));
    const [least, most] = low ? [Number(nearest.numerator), Infinity] : [-Infinity, Number(nearest.numerator)];
    operations.add((count) => {
      markOutside(operations.marks, worked.values, least, most, count);
    });
    return;
  }
  const near = isZero(at) ? 0 : nearestDouble(at);
  const parts = isExact(at) ? wholeParts(at.abs()) : undefined;
  const reach = parts?.[1] === 1 ? 0 : Math.abs(near) * 4 * unitRoundoff;
  const doubtful = (row: number): void => {
    const here = exactAt(row);
    if (here === undefined || !isExact(amount) || !isWithin(edge, here.compare(amount))) giveUp(row);
  };
  const [least, most] = low ? [near + reach, Infinity] : [-Infinity, near - reach];
  operations.add((count) => {
    eachNear(worked, least, most, met && reach === 0, count, doubtful);
  });
}
