import { type Amount, exact, exactArithmetic, readDigits } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import { toBase, unitScale } from "../core/unit-scale.js";
import type { UnitCode } from "../core/units.js";
import { type Range, readReal, readWhole } from "./column.js";
import type { Edges } from "./edges.js";
import { exactly, exactSlot, ifExact } from "./exact-rows.js";
import type { FlatProgram, Slot } from "./flat-program.js";
import { Buffers, type Operand, type Real, type Whole } from "./operands.js";
import { planAnswer, planLimits, type PlannedStep } from "./plan-answer.js";
import { type Instruction, Operations } from "./plan-operations.js";
import { planRounding, type RoundingCare } from "./plan-rounding.js";

/** A column as a plan takes it. What the numbers of a block turn out to be outgrow, is set anew, and planned again. */
export interface PlannedColumn {
  readonly name: string;
  readonly unit: UnitCode;
  readonly range: Range;
  /** Over which all numbers are whole; 0 where they are taken as doubles. */
  denominator: number;
  /** Largest size of the whole numbers. */
  most: number;
}

/** What a plan is made from. */
export interface Wanted {
  readonly flat: FlatProgram;
  readonly rows: number;
  readonly columns: readonly PlannedColumn[];
  readonly fixed: ReadonlyMap<string, Amount>;
  readonly steps: readonly PlannedStep[];
  /** Slots that must lie in a range besides. */
  readonly guards?: readonly { readonly slot: number; readonly limits: Edges }[];
  /** By slot, the largest size that a rounding has given. */
  readonly roundings: Map<number, number>;
}

/** The operations of a calculation on blocks of rows, once the units and the kinds of numbers are known. */
export interface Plan {
  /** Reads the numbers of a column for a block; false where they are not what the plan takes them for. */
  readonly read: (column: PlannedColumn, numbers: Float64Array, count: number) => boolean;
  /** Works out a block that has been read; false where a rounding outgrew what the plan took it for. */
  readonly run: (count: number) => boolean;
  /** Rows of the block that are left to the exact way. */
  readonly marks: Uint8Array;
  /** The numbers of the steps, in order, in the units wanted. */
  readonly answers: readonly Float64Array[];
  /** What a slot holds. */
  readonly operandAt: (slot: number) => Operand;
}

/** Plans the operations. */
export function planFor({ flat, rows, columns, fixed, steps, guards = [], roundings }: Wanted): Plan {
  const marks = new Uint8Array(rows);
  const instructions: Instruction[] = [];
  const operations = new Operations(new Buffers(rows), marks, (instruction) => void instructions.push(instruction));
  const operands: Operand[] = [];
  const inputs = new Map(columns.map((column) => [column.name, { column, numbers: numbersFor(column, operations.buffers) }]));
  let outgrown = false;
  const inputAt = (row: number) => (name: string): Fraction => {
    const { column, numbers } = inputs.get(name) as { readonly column: PlannedColumn; readonly numbers: Whole | Real };
    return exactly(toBase(readDigits(String(numbers.values[row])), column.unit));
  };
  const exactAt = (slot: number, row: number): Fraction | undefined => (marks[row] === 1 ? undefined : ifExact(() => exactSlot(flat, operands, slot, row, inputAt(row))));
  const giveUp = (row: number): void => {
    marks[row] = 1;
  };
  const careOf = (slot: number): RoundingCare => ({
    most: roundings.get(slot) ?? 2 ** 14,
    outgrown: (most) => {
      roundings.set(slot, 2 ** Math.ceil(Math.log2(most)));
      outgrown = true;
    },
    resolve: (row) => {
      const whole = exactAt(slot, row);
      return whole === undefined ? NaN : Number(whole.numerator);
    },
    giveUp,
  });
  const operandOf = (slot: Slot, place: number): Operand => {
    if (slot.kind === "literal") return { kind: "fixed", amount: exactArithmetic.literal(slot.text) };
    if (slot.kind === "operation") {
      const [left, right] = [operands[slot.left] as Operand, operands[slot.right] as Operand];
      const { code } = slot;
      return code === "ceil" || code === "floor" || code === "round" ? planRounding(operations, code, left, careOf(place)) : operations.apply(code, left, right);
    }
    const input = inputs.get(slot.name);
    return input === undefined ? { kind: "fixed", amount: fixed.get(slot.name) as Amount } : inBaseUnits(operations, input.numbers, input.column.unit);
  };
  flat.slots.forEach((slot, place) => operands.push(operandOf(slot, place)));
  for (const { slot, limits } of guards) planLimits(operations, limits, operands[slot] as Operand, { exactAt: (row) => exactAt(slot, row), giveUp });
  const places = new Map(flat.steps.map(({ name, slot }) => [name, slot]));
  const answers = steps.map((step) => {
    const slot = places.get(step.name) as number;
    return planAnswer(operations, step, operands[slot] as Operand, { exactAt: (row) => exactAt(slot, row), giveUp });
  });

  return {
    marks,
    answers,
    operandAt: (slot) => operands[slot] as Operand,
    read: ({ name, denominator, range, most }, numbers, count) => {
      const { values, errors } = inputs.get(name)?.numbers as Whole | Real;
      if (denominator !== 0) return readWhole(values, numbers, denominator, range, marks, count) <= most;
      readReal(values, errors, numbers, range, marks, count);
      return true;
    },
    run: (count) => {
      outgrown = false;
      for (const instruction of instructions) instruction(count);
      return !outgrown;
    },
  };
}

function numbersFor({ denominator, most }: PlannedColumn, buffers: Buffers): Whole | Real {
  return denominator === 0 ? buffers.real(exact(1n)) : buffers.whole(exact(1n, BigInt(denominator)), most);
}

function inBaseUnits(operations: Operations, numbers: Operand, unit: UnitCode): Operand {
  const { size, zero } = unitScale(unit);
  return operations.apply("add", operations.apply("multiply", numbers, { kind: "fixed", amount: size }), { kind: "fixed", amount: zero });
}
