// Runs mutants one after another in a process of its own, so that one that hangs or eats all memory can be ended.
import { readFileSync } from "node:fs";
import path from "node:path";
import { performance } from "node:perf_hooks";
import { Modules, reads } from "./modules.mjs";
import { hoist, littleVitest, runTests } from "./little-vitest.mjs";

/** @typedef {import("./mutant.mjs").Mutant} Mutant */
/** @typedef {import("../../src/core/dimensions.js").DimensionName} DimensionName */
/** @typedef {{ readonly file: string, readonly reached: ReadonlySet<string>, readonly time: number }} TestFile */

const root = path.resolve(import.meta.dirname, "../..");
const modules = new Modules(root, { vitest: littleVitest });
const send = (/** @type {unknown} */ message) => process.send?.(message);

/** @param {string} file */
async function run(file) {
  const begun = performance.now();
  const result = await runTests(() => modules.loadTest(file, hoist));
  modules.bringBack();
  return { ...result, time: performance.now() - begun };
}

/** Every test file once, unchanged: what it reaches, how long it takes, and that it passes. @param {readonly string[]} files @param {number} longest - a file that takes longer is left out */
async function unchanged(files, longest) {
  /** @type {TestFile[]} */
  const tests = [];
  for (const file of files) {
    send({ kind: "alive" });
    const text = readFileSync(file, "utf8");
    if (!reads(file, text)) {
      send({ kind: "left out", file: path.relative(root, file) });
      continue;
    }
    // The first run also loads packages and compiles; what takes far too long even so needs no second one.
    const first = await run(file);
    const { tests: count, failure, time } = first.time > 1.5 * longest ? first : await run(file);
    if (failure !== undefined) throw new Error(`${path.relative(root, file)} fails unchanged: ${failure}`);
    send({ kind: "unchanged", file: path.relative(root, file), tests: count, time });
    if (time < longest) tests.push({ file, reached: modules.reachedFrom(file), time });
  }
  return tests;
}

/** The tests that reach a file: its own first, or that of limits for a limit; then the quickest. @param {readonly TestFile[]} tests @param {string} file @param {Mutant["kind"]} kind */
function testsOf(tests, file, kind) {
  const first = ["limit", "default", "whole"].includes(kind) ? "limits" : path.basename(file, ".ts");
  const rank = (/** @type {TestFile} */ test) => (path.basename(test.file, ".test.ts") === first ? -1 : test.time);
  return tests.filter(({ reached }) => reached.has(file)).sort((a, b) => rank(a) - rank(b));
}

/** Throws where the dimension check, which every definition has to pass, refuses a changed one. @param {string} file */
function checkDimensions(file) {
  const { checkDimension } = /** @type {typeof import("../../src/core/dimensions.js")} */ (modules.load(path.join(root, "src/core/dimensions.ts")));
  const { choicesOf, formulasFor } = /** @type {typeof import("../../src/core/prepared.js")} */ (modules.load(path.join(root, "src/core/prepared.ts")));
  for (const one of Object.values(/** @type {Record<string, unknown>} */ (modules.load(file)))) {
    if (typeof one !== "function" || !("definition" in one)) continue;
    const definition = /** @type {import("../../src/core/definition.js").Definition} */ (one.definition);
    for (const chosen of choicesOf(definition)) {
      const given = Object.entries(definition.given).filter(([name, { either }]) => either === undefined || chosen.includes(name));
      /** @type {Map<string, DimensionName>} */
      const names = new Map([...given, ...Object.entries(definition.constants ?? {})].map(([name, { is }]) => [name, is]));
      for (const { name, formula } of formulasFor(definition, chosen)) {
        const is = definition.steps[name]?.is ?? "ratio";
        checkDimension(formula, is, names);
        names.set(name, is);
      }
    }
  }
}

/** @param {readonly TestFile[]} tests @param {Mutant} mutant */
async function judge(tests, mutant) {
  const file = path.join(root, mutant.file);
  const text = readFileSync(file, "utf8");
  const changed = text.slice(0, mutant.start) + mutant.text + text.slice(mutant.end);
  if (!reads(file, changed)) return { status: "invalid" };
  modules.change(file, changed);
  try {
    if (mutant.kind === "formula") {
      try {
        checkDimensions(file);
      } catch {
        return { status: "refused" };
      }
    }
    for (const test of testsOf(tests, file, mutant.kind)) {
      const { failure } = await run(test.file);
      if (failure !== undefined) return { status: "killed", by: path.relative(root, test.file), failure };
    }
    return { status: "survived" };
  } finally {
    modules.change(file);
  }
}

// Without the one that started it, it has no work.
process.on("disconnect", () => process.exit());
process.on("message", (/** @type {{ readonly tests: readonly string[], readonly mutants: readonly Mutant[], readonly longest: number | null }} */ order) => {
  void (async () => {
    // Infinity does not come through as a message.
    const tests = await unchanged(order.tests.map((file) => path.join(root, file)), order.longest ?? Infinity);
    for (const mutant of order.mutants) {
      send({ kind: "begun", id: mutant.id });
      const begun = performance.now();
      const judged = await judge(tests, mutant);
      send({ kind: "judged", id: mutant.id, time: performance.now() - begun, ...judged });
      // Lets messages come in: that the other end has gone is one.
      await new Promise((resolve) => setImmediate(resolve));
    }
    process.disconnect();
  })().catch((/** @type {unknown} */ error) => {
    send({ kind: "failed", why: error instanceof Error ? error.stack : String(error) });
    process.exit(1);
  });
});
