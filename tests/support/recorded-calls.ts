// The calls that the examples of the doc comments make, of each function at least one: with what it was given and what it answered.
import { readFileSync } from "node:fs";
import * as zodMini from "zod/mini";
import { catalogue } from "../../src/catalogue.js";
import type { AnyCallable } from "../../src/core/index.js";
import { commentExamples, runExample } from "./examples.js";
import { allFound, allTopics, importSource, type Module, sourceFiles, sourcePath } from "./modules.js";

/** One call. */
export interface RecordedCall {
  readonly of: AnyCallable;
  readonly input: unknown;
  readonly answers: unknown;
}

/** A module whose functions of the catalogue write down what they are called with. */
function recording(module: Module, calls: RecordedCall[]): Module {
  const known = new Set<unknown>(catalogue);
  return Object.fromEntries(Object.entries(module).map(([name, value]) => {
    if (!known.has(value)) return [name, value];
    const of = value as AnyCallable & ((input: unknown) => unknown);
    const answered = (input: unknown, answers: unknown): void => void calls.push({ of, input, answers });
    const solve = (input: unknown): unknown => {
      const solution = of.solve(input as never);
      answered(input, solution.answers);
      return solution;
    };
    return [name, new Proxy(of, {
      apply(_target, _self, [input]: [unknown]) {
        const answers = of(input);
        answered(input, answers);
        return answers;
      },
      get: (target, key): unknown => (key === "solve" ? solve : Reflect.get(target, key)),
    })];
  }));
}

/** Every call of the examples in the doc comments of the files that hold a function of the catalogue. */
export async function recordedCalls(): Promise<readonly RecordedCall[]> {
  const calls: RecordedCall[] = [];
  const modules = await Promise.all(sourceFiles.map(importSource));
  // What users see hides what a file has under the same name.
  const seen = (await allTopics()).map(({ module }) => module);
  const scope = { z: zodMini, ...recording(Object.assign({}, ...modules, ...seen) as Module, calls) };
  const files = new Set((await allFound()).map(({ file }) => file));
  for (const file of files) for (const example of commentExamples(`src/${file}`, readFileSync(sourcePath(file), "utf8"))) await runExample(example, scope, {});
  return calls;
}
