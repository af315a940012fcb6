import type { Fraction } from "fraction.js";
import { type Amount, type Arithmetic, NoValue, readDigits } from "./amount.js";
import type { Formula } from "./formula.js";

/** What an instruction does; `winner` marks the two that remember which of their arguments they took. */
type Operation = "add" | "subtract" | "multiply" | "divide" | "negate" | "power" | "min" | "max" | "ceil" | "floor" | "round" | "sqrt" | "ln" | "log10" | "exp" | "sin" | "asin";

/** One instruction: it reads one or two slots and writes another. */
interface Instruction {
  readonly does: Operation;
  readonly into: number;
  readonly left: number;
  readonly right: number;
  readonly exponent?: Fraction;
}

/** A step of a program: the instructions that work it out, and the slot that holds its value. */
export interface ProgramStep {
  readonly name: string;
  readonly formula: Formula;
  readonly from: number;
  readonly until: number;
  readonly slot: number;
  /** Where the formula is a min or a max: the slot of each argument, and its text. */
  readonly arguments: readonly { readonly slot: number; readonly text: string }[];
}

/** Steps flattened into slots: the names given first, then everything the formulas need. */
export interface Program {
  readonly slots: number;
  readonly slotOf: ReadonlyMap<string, number>;
  readonly literals: readonly { readonly slot: number; readonly digits: string }[];
  readonly pi: number | undefined;
  readonly code: readonly Instruction[];
  readonly steps: readonly ProgramStep[];
}

/**
 * Flattens steps into one program of slots.
 *
 * @param names - names that have a value before the first step
 * @param steps - the steps in order
 * @throws Error where a formula names something that is no input, constant or earlier step
 */
export function compile(names: readonly string[], steps: readonly { readonly name: string; readonly formula: Formula }[]): Program {
  const slotOf = new Map<string, number>();
  const literals = new Map<string, number>();
  const code: Instruction[] = [];
  let slots = 0;
  let pi: number | undefined;
  for (const name of names) slotOf.set(name, slots++);

  const emit = (does: Operation, left: number, right = left, exponent?: Fraction): number => {
    code.push({ does, into: slots, left, right, ...(exponent === undefined ? {} : { exponent }) });
    return slots++;
  };
  const slot = (formula: Formula): number => {
    switch (formula.kind) {
      case "number": {
        const known = literals.get(formula.digits) ?? slots++;
        literals.set(formula.digits, known);
        return known;
      }
      case "pi":
        return (pi ??= slots++);
      case "name": {
        const known = slotOf.get(formula.name);
        if (known === undefined) throw new Error(`"${formula.name}" is no input, constant or earlier step`);
        return known;
      }
      case "negate":
        return emit("negate", slot(formula.of));
      case "sum":
        return emit(formula.operator === "+" ? "add" : "subtract", slot(formula.left), slot(formula.right));
      case "product":
        return emit(formula.operator === "*" ? "multiply" : "divide", slot(formula.left), slot(formula.right));
      case "power":
        return emit("power", slot(formula.base), undefined, exponentOf(formula.exponent));
      case "call": {
        const { function: does } = formula;
        const [first = 0, ...others] = formula.of.map(slot);
        return does === "min" || does === "max" ? others.reduce((left, right) => emit(does, left, right), first) : emit(does, first);
      }
    }
  };
  /** Of a min or a max: its arguments, which are names or numbers, so that the one that wins can be told. */
  const argumentsOf = (step: string, formula: Formula): ProgramStep["arguments"] => {
    if (formula.kind !== "call" || (formula.function !== "min" && formula.function !== "max")) return [];
    return formula.of.map((part) => {
      if (part.kind !== "name" && part.kind !== "number") throw new Error(`${step}: what ${formula.function} compares must have names; make a step of each`);
      return { slot: slot(part), text: part.kind === "name" ? part.name : part.digits };
    });
  };
  const flattened = steps.map(({ name, formula }): ProgramStep => {
    const from = code.length;
    const at = slot(formula);
    const step = { name, formula, from, until: code.length, slot: at, arguments: argumentsOf(name, formula) };
    slotOf.set(name, at);
    return step;
  });
  return { slots, slotOf, literals: [...literals].map(([digits, at]) => ({ slot: at, digits })), pi, code, steps: flattened };
}

/** Reads the literal exponent of a power: `"2"`, `"-1"`, `"2 / 9.5"`. */
function exponentOf(text: string): Fraction {
  const [above = "", below = "1"] = text.split(" / ");
  return readDigits(above).div(readDigits(below));
}

/** A step that has no finite value, and why. */
export class StepFailure extends Error {
  readonly step: string;

  constructor(step: string, reason: string) {
    super(reason);
    this.step = step;
  }
}

/** What a run leaves: the value of every slot, and for each min and max the slot that won. */
export interface Run<N> {
  readonly values: readonly N[];
  readonly won: ReadonlyMap<number, number>;
}

/**
 * Runs a program.
 *
 * @param program - from {@link compile}
 * @param given - the values of the names, in their order
 * @param arithmetic - the numbers to run it in
 * @param check - looks at each step's value as soon as it is known
 * @throws {@link StepFailure} naming the step that has no finite value
 */
export function evaluate<N = Amount>(program: Program, given: readonly N[], arithmetic: Arithmetic<N>, check?: (step: ProgramStep, value: N) => void): Run<N> {
  const values = new Array<N>(program.slots);
  const won = new Map<number, number>();
  given.forEach((value, index) => (values[index] = value));
  for (const { slot, digits } of program.literals) values[slot] = arithmetic.literal(digits);
  if (program.pi !== undefined) values[program.pi] = arithmetic.pi();
  for (const step of program.steps) {
    try {
      for (let at = step.from; at < step.until; at += 1) execute(program.code[at] as Instruction, values, won, arithmetic);
    } catch (error) {
      if (error instanceof NoValue) throw new StepFailure(step.name, error.message);
      throw error;
    }
    check?.(step, values[step.slot] as N);
  }
  return { values, won };
}

function execute<N>(instruction: Instruction, values: N[], won: Map<number, number>, arithmetic: Arithmetic<N>): void {
  const { does, into } = instruction;
  const left = values[instruction.left] as N;
  const right = values[instruction.right] as N;
  switch (does) {
    case "add":
    case "subtract":
    case "multiply":
    case "divide":
      values[into] = arithmetic[does](left, right);
      return;
    case "power":
      values[into] = arithmetic.power(left, instruction.exponent as Fraction);
      return;
    case "min":
    case "max": {
      const order = arithmetic.compare(left, right);
      const takesLeft = does === "min" ? order <= 0 : order >= 0;
      values[into] = takesLeft ? left : right;
      won.set(into, takesLeft ? instruction.left : instruction.right);
      return;
    }
    default:
      values[into] = arithmetic[does](left);
  }
}

/** Of a step that is a min or a max, the text of the argument that won. */
export function governing(step: ProgramStep, run: Run<unknown>): string | undefined {
  const argumentAt = (at: number): ProgramStep["arguments"][number] | undefined => step.arguments.find(({ slot }) => slot === at);
  // A min or max of several is a chain of pairs: it is followed down to one of the arguments.
  let winner = run.won.get(step.slot);
  while (winner !== undefined && argumentAt(winner) === undefined) winner = run.won.get(winner);
  return winner === undefined ? undefined : argumentAt(winner)?.text;
}
