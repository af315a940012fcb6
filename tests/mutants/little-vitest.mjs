// What the test files take from vitest, so that one file runs in a plain process within milliseconds: its own `expect`, and
// a `describe` and `it` that only remember. The first test that fails ends a file.
import { createRequire } from "node:module";

const ofVitest = createRequire(createRequire(import.meta.url).resolve("vitest/package.json"));
/** @type {typeof import("@vitest/expect")} */
const { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend, ASYMMETRIC_MATCHERS_OBJECT, customMatchers, getState, setState } = await import(ofVitest.resolve("@vitest/expect"));

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

/** @typedef {import("vitest").ExpectStatic} Expect */
const expect = /** @type {Expect} */ (/** @type {unknown} */ ((/** @type {unknown} */ value, /** @type {string | undefined} */ message) => chai.expect(value, message)));
const extend = (/** @type {unknown[]} */ ...given) => { /** @type {(...given: unknown[]) => void} */ (Reflect.get(chai.expect, "extend")).call(chai.expect, ...given); };
Object.assign(expect, chai.expect, Reflect.get(globalThis, ASYMMETRIC_MATCHERS_OBJECT), {
  getState: () => getState(expect),
  setState: (/** @type {object} */ state) => { setState(state, expect); },
  extend: (/** @type {unknown} */ matchers) => { extend(expect, matchers); },
  unreachable: (/** @type {string} */ message = "expected not to be reached") => chai.assert.fail(message),
});
setState({ assertionCalls: 0 }, expect);
extend(expect, customMatchers);

/** @typedef {() => unknown} Run */
/** @typedef {{ name: string, before: Run[], after: Run[], beforeEach: Run[], afterEach: Run[], parts: (Suite | { name: string, run: Run })[] }} Suite */

/** @param {string} name @returns {Suite} */
const suite = (name) => ({ name, before: [], after: [], beforeEach: [], afterEach: [], parts: [] });

/** @type {Suite[]} */
let open = [suite("")];
const here = () => /** @type {Suite} */ (open.at(-1));

/** Runs what it is given for each row of a table, as vitest's `each` does: rows are spread where all of them are lists. */
const eachOf = (/** @type {(name: string, run: Run) => void} */ add) => (/** @type {readonly unknown[]} */ rows) => (/** @type {string} */ name, /** @type {(...row: unknown[]) => unknown} */ run) => {
  rows.forEach((row, index) => { add(`${name} [${String(index)}]`, () => run(...(rows.every(Array.isArray) ? /** @type {unknown[]} */ (row) : [row]))); });
};

const addTest = (/** @type {string} */ name, /** @type {Run | object} */ runOrOptions, /** @type {unknown[]} */ ...rest) => {
  const run = typeof runOrOptions === "function" ? runOrOptions : rest[0];
  here().parts.push({ name, run: /** @type {Run} */ (run) });
};
const addSuite = (/** @type {string} */ name, /** @type {Run} */ run) => {
  const inner = suite(name);
  here().parts.push(inner);
  open.push(inner);
  run();
  open.pop();
};
const nothing = () => undefined;
const it = Object.assign(addTest, { each: eachOf(addTest), skip: nothing, skipIf: (/** @type {boolean} */ no) => (no ? nothing : addTest), runIf: (/** @type {boolean} */ yes) => (yes ? addTest : nothing) });
const describe = Object.assign(addSuite, { each: eachOf(addSuite), skip: nothing, skipIf: (/** @type {boolean} */ no) => (no ? nothing : addSuite), runIf: (/** @type {boolean} */ yes) => (yes ? addSuite : nothing) });

/** What the file that is run asked to be hoisted, in order. @type {unknown[]} */
let hoisted = [];

/** Takes the values that a file hoists: they were made before it. @param {readonly unknown[]} values */
export function hoist(values) {
  hoisted = [...values];
}

/** The module that stands in for vitest. Modules have been replaced before the file is loaded. */
export const littleVitest = {
  vi: { hoisted: () => hoisted.shift(), mock: nothing },
  expect, it, test: it, describe,
  beforeAll: (/** @type {Run} */ run) => here().before.push(run),
  afterAll: (/** @type {Run} */ run) => here().after.push(run),
  beforeEach: (/** @type {Run} */ run) => here().beforeEach.push(run),
  afterEach: (/** @type {Run} */ run) => here().afterEach.push(run),
};

/** @param {Suite} one @param {readonly Suite[]} around @returns {Promise<number>} how many tests ran */
async function runSuite(one, around = []) {
  let count = 0;
  const all = [...around, one];
  for (const before of one.before) await before();
  try {
    for (const part of one.parts) {
      if ("parts" in part) {
        count += await runSuite(part, all);
        continue;
      }
      count += 1;
      for (const { beforeEach } of all) for (const before of beforeEach) await before();
      try {
        await part.run();
      } catch (error) {
        throw new Error(`${[...all.map(({ name }) => name), part.name].filter((name) => name !== "").join(" > ")}: ${error instanceof Error ? error.message : String(error)}`);
      } finally {
        for (const { afterEach } of all) for (const after of afterEach) await after();
      }
    }
  } finally {
    for (const after of one.after) await after();
  }
  return count;
}

/**
 * Runs a test file to its first failure.
 *
 * @param {() => Promise<void>} load - what loads the file
 * @returns {Promise<{ readonly tests: number, readonly failure?: string }>}
 */
export async function runTests(load) {
  open = [suite("")];
  const [top] = open;
  try {
    await load();
    return { tests: await runSuite(/** @type {Suite} */ (top)) };
  } catch (error) {
    return { tests: 0, failure: error instanceof Error ? error.message : String(error) };
  }
}
