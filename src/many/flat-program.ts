import type { Arithmetic } from "../core/amount.js";
import { formulasFor } from "../core/prepared.js";
import type { Definition } from "../core/definition.js";
import type { Formula, FunctionName } from "../core/formula.js";

/** What an operation does; one with one operand has it on both sides. */
export type Code = "add" | "subtract" | "multiply" | "divide" | "negate" | "power" | FunctionName;

/** What stands in a slot: a value by its name, a number as the formula writes it, or an operation on slots before it. */
export type Slot =
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "literal"; readonly text: string }
  | { readonly kind: "operation"; readonly code: Code; readonly left: number; readonly right: number };

/** The steps of a calculation, flat: every slot is worked out from slots before it, and what is the same stands once. */
export interface FlatProgram {
  readonly slots: readonly Slot[];
  /** The slot of each step, in order. */
  readonly steps: readonly { readonly name: string; readonly slot: number }[];
}

const codes = { "+": "add", "-": "subtract", "*": "multiply", "/": "divide" } as const;

/** Flattens the steps of a definition, where the inputs chosen of its pairs are these. */
export function flatProgram(definition: Definition, chosen: readonly string[]): FlatProgram {
  const slots: Slot[] = [];
  const places = new Map<string, number>();
  const steps = new Map<string, number>();
  const place = (key: string, slot: Slot): number => {
    const known = places.get(key);
    if (known !== undefined) return known;
    places.set(key, slots.length);
    return slots.push(slot) - 1;
  };
  const literal = (text: string): number => place(`literal ${text}`, { kind: "literal", text });
  const operation = (code: Code, left: number, right = left): number => place(`${code} ${String(left)} ${String(right)}`, { kind: "operation", code, left, right });
  const flatten = (formula: Formula): number => {
    switch (formula.kind) {
      case "name":
        return steps.get(formula.name) ?? place(`name ${formula.name}`, { kind: "name", name: formula.name });
      case "number":
        return literal(formula.digits);
      case "pi":
        return literal("pi");
      case "negate":
        return operation("negate", flatten(formula.of));
      case "power":
        return operation("power", flatten(formula.base), formula.exponent.split(" / ").map(literal).reduce((above, below) => operation("divide", above, below)));
      case "call": {
        const [first = 0, ...others] = formula.of.map(flatten);
        return others.length === 0 ? operation(formula.function, first) : others.reduce((a, b) => operation(formula.function, a, b), first);
      }
      default:
        return operation(codes[formula.operator], flatten(formula.left), flatten(formula.right));
    }
  };
  for (const { name, formula } of formulasFor(definition, chosen)) steps.set(name, flatten(formula));
  return { slots, steps: [...steps].map(([name, slot]) => ({ name, slot })) };
}

/** Works out one slot, and on the way every slot it needs that is not known yet; what is worked out is known then. */
export function slotValue<N>({ slots }: FlatProgram, slot: number, values: (N | undefined)[], arithmetic: Arithmetic<N>): N {
  const at = (place: number): N => {
    const known = values[place];
    if (known !== undefined) return known;
    const here = slots[place];
    if (here === undefined || here.kind === "name") throw new Error(`"${here?.name ?? String(place)}" has no value`);
    const value = here.kind === "literal" ? arithmetic.literal(here.text) : apply(here.code, at(here.left), here.left === here.right ? undefined : at(here.right), arithmetic);
    values[place] = value;
    return value;
  };
  return at(slot);
}

/** One operation; without a second operand it is the first again, and what takes one leaves it alone. */
export function apply<N>(code: Code, left: N, right: N | undefined, arithmetic: Arithmetic<N>): N {
  const operation: (a: N, b: N) => N = arithmetic[code];
  return operation(left, right ?? left);
}
