import { packages } from "virtual:packages";
import * as zodMini from "zod/mini";
import type { AnyCallable } from "../../../src/core/callable.js";
import { isQuantity } from "../../../src/core/quantity.js";
import { type Example, plain, runExample } from "../../../tests/support/examples.js";

/** An example that was run. */
export interface RunExample {
  readonly code: string;
  /** What the calculation was given in it, as plain data; quantities as texts. */
  readonly input: unknown;
}

type Scope = Readonly<Record<string, unknown>>;

const scope: Scope = Object.assign({ z: zodMini }, ...Object.values(packages)) as Scope;

/**
 * Runs the example of a calculation: what its lines say must come out, and what it was given is kept.
 *
 * @throws Error where a line says something else than what comes out
 */
export async function exampleOf(example: Example, run: AnyCallable, name: string): Promise<RunExample> {
  const inputs: unknown[] = [];
  const kept = keeping(run, inputs);
  const swapped = Object.fromEntries(Object.entries(packages).map(([entry, module]) => [entry, name in module ? { ...module, [name]: kept } : module]));
  for (const { line, found, told } of await runExample(example, { ...scope, [name]: kept }, swapped)) {
    const [one, other] = [plain(found, told), told].map((value) => JSON.stringify(value));
    if (one !== other) throw new Error(`the example of ${run.id} says "${line}", but ${String(one)} comes out`);
  }
  // Before all others the first that has an answer: an example may begin with what is refused.
  const input = inputs.map(asData).find((given) => run.try(given).ok);
  if (input === undefined) throw new Error(`the example of ${run.id} does not call it`);
  return { code: example.code, input };
}

/** The same calculation, which keeps what it is given. */
function keeping(run: AnyCallable, inputs: unknown[]): AnyCallable {
  const keep = (input: unknown): never => {
    inputs.push(input);
    return input as never;
  };
  const whole = (input: unknown): unknown => run(keep(input));
  return Object.assign(whole, run, { solve: (input: unknown) => run.solve(keep(input)), try: (input: unknown) => run.try(keep(input)) });
}

/** Quantities as the texts that read back into them, everything else as it is. */
function asData(value: unknown): unknown {
  if (isQuantity(value)) return value.toString();
  if (Array.isArray(value)) return value.map(asData);
  if (typeof value !== "object" || value === null) return value;
  if ("toJSON" in value) return JSON.parse(JSON.stringify(value)) as unknown;
  return Object.fromEntries(Object.entries(value).filter(([, inner]) => inner !== undefined).map(([key, inner]) => [key, asData(inner)]));
}
