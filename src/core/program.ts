import { type Amount, type Arithmetic, NoValue } from "./amount.js";
import type { Formula } from "./formula.js";

/** One instruction: it reads two slots, or the left one alone, and writes another. */
interface Instruction {
  readonly does: Exclude<keyof Arithmetic<Amount>, "literal" | "compare">;
  readonly left: number;
  readonly right: number;
  readonly into: number;
}

/** A step of a program: where its instructions end, and the slot that holds its value. */
export interface ProgramStep {
  readonly name: string;
  readonly formula: Formula;
  readonly until: number;
  readonly slot: number;
  /** Where the formula is a min or a max: the slot of each argument, and its text. */
  readonly arguments: readonly { readonly slot: number; readonly text: string }[];
}

/** Steps flattened into slots: the names given first, then everything the formulas need. */
export interface Program {
  readonly literals: readonly { readonly slot: number; readonly text: string }[];
  readonly code: readonly Instruction[];
  readonly steps: readonly ProgramStep[];
}

const operations = { "+": "add", "-": "subtract", "*": "multiply", "/": "divide" } as const;

/**
 * Flattens steps into one program of slots.
 *
 * @param names - names that have a value before the first step
 * @param steps - the steps in order
 * @throws Error where a formula names something that is no input, constant or earlier step
 */
export function compile(names: readonly string[], steps: readonly { readonly name: string; readonly formula: Formula }[]): Program {
  const slots = new Map(names.map((name, index) => [name, index]));
  const literals: { slot: number; text: string }[] = [];
  const code: Instruction[] = [];
  let free = names.length;

  const emit = (does: Instruction["does"], left: number, right = left): number => {
    code.push({ does, left, right, into: free });
    return free++;
  };
  const literal = (text: string): number => {
    const known = slots.get(text);
    if (known !== undefined) return known;
    slots.set(text, free);
    literals.push({ slot: free, text });
    return free++;
  };
  const slotOf = (formula: Formula): number => {
    switch (formula.kind) {
      case "number":
        return literal(formula.digits);
      case "pi":
        return literal("pi");
      case "name": {
        const known = slots.get(formula.name);
        if (known === undefined) throw new Error(`"${formula.name}" is no input, constant or earlier step`);
        return known;
      }
      case "negate":
        return emit("negate", slotOf(formula.of));
      case "power": {
        const [above = 0, below] = formula.exponent.split(" / ").map(literal);
        return emit("power", slotOf(formula.base), below === undefined ? above : emit("divide", above, below));
      }
      case "call": {
        const [first = 0, ...others] = formula.of.map(slotOf);
        return others.length === 0 ? emit(formula.function, first) : others.reduce((left, right) => emit(formula.function, left, right), first);
      }
      default:
        return emit(operations[formula.operator], slotOf(formula.left), slotOf(formula.right));
    }
  };
  /** Of a min or a max: its arguments, which are names or numbers, so that the one that wins can be told. */
  const argumentsOf = (step: string, formula: Formula): ProgramStep["arguments"] => {
    if (formula.kind !== "call" || formula.of.length === 1) return [];
    return formula.of.map((part) => {
      if (part.kind !== "name" && part.kind !== "number") throw new Error(`${step}: what ${formula.function} compares must have names; make a step of each`);
      return { slot: slotOf(part), text: part.kind === "name" ? part.name : part.digits };
    });
  };
  const flattened = steps.map(({ name, formula }): ProgramStep => {
    const slot = slotOf(formula);
    slots.set(name, slot);
    return { name, formula, until: code.length, slot, arguments: argumentsOf(name, formula) };
  });
  return { literals, code, steps: flattened };
}

/** A step that has no finite value, and why. */
export class StepFailure extends Error {
  readonly step: string;

  constructor(step: string, reason: string) {
    super(reason);
    this.step = step;
  }
}

/** What a run leaves: the value of every slot. */
export interface Run<N> {
  readonly values: readonly N[];
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
  const values = [...given];
  for (const { slot, text } of program.literals) values[slot] = arithmetic.literal(text);
  let at = 0;
  for (const step of program.steps) {
    try {
      for (; at < step.until; at += 1) execute(program.code[at] as Instruction, values, arithmetic);
    } catch (error) {
      throw error instanceof NoValue ? new StepFailure(step.name, error.message) : error;
    }
    check?.(step, values[step.slot] as N);
  }
  return { values };
}

function execute<N>({ does, left, right, into }: Instruction, values: N[], arithmetic: Arithmetic<N>): void {
  // What takes one argument leaves the other alone.
  const operation: (left: N, right: N) => N = arithmetic[does];
  values[into] = operation(values[left] as N, values[right] as N);
}

/** Of a step that is a min or a max, the text of the argument that won: its value is the step's own. */
export function governing(step: ProgramStep, { values }: Run<unknown>): string | undefined {
  return step.arguments.find(({ slot }) => values[slot] === values[step.slot])?.text;
}
