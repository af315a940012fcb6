// A long run against inputs of strangers: node tests/fuzz/run.mjs [count] [first seed]. It prints the seed of every
// input that breaks a promise, hangs, or takes too much memory; the same seed gives the same input. A count of 1 shows it.
import { build } from "esbuild";
import { mkdirSync } from "node:fs";
import path from "node:path";
import { Worker } from "node:worker_threads";

const root = path.resolve(import.meta.dirname, "../..");
const [count = 1_000_000, start = Date.now() % 1_000_000_000] = process.argv.slice(2).map(Number);
/** Seconds after which a call counts as one that hangs, and the megabytes it may take. */
const [patience, memory] = [30, 1024];

const bundle = path.join(root, "node_modules/.cache/fuzz/worker.mjs");
mkdirSync(path.dirname(bundle), { recursive: true });
await build({ entryPoints: [path.join(import.meta.dirname, "worker.ts")], bundle: true, platform: "node", format: "esm", packages: "external", outfile: bundle, logLevel: "error" });
process.env.FUZZ_EXAMPLES = path.join(root, "examples");

/** @typedef {{ seed?: number, what?: string, broken?: string[], answered?: number }} Told */

console.log(`${String(count)} inputs from seed ${String(start)}`);
let [next, faults, answers, tenths] = [start, 0, 0, 0];
while (next < start + count) next = await runFrom(next);
console.log(`${String(count)} inputs, ${String(answers)} answered, ${String(faults)} broke a promise.`);
process.exitCode = faults === 0 ? 0 : 1;

/** @param {number} seed @param {string} what */
function fault(seed, what) {
  faults += 1;
  console.error(`seed ${String(seed)}: ${what}`);
}

/** Runs until the end, or until a seed hangs or bursts; gives the seed to go on from. @param {number} first @returns {Promise<number>} */
function runFrom(first) {
  const at = new Int32Array(new SharedArrayBuffer(4));
  const worker = new Worker(bundle, { workerData: { first, count: start + count - first, at }, resourceLimits: { maxOldGenerationSizeMb: memory } });
  let [last, since, ended] = [-1, Date.now(), false];
  return new Promise((resolve) => {
    /** @param {number} seed */
    const end = (seed) => {
      if (ended) return;
      ended = true;
      clearInterval(watch);
      void worker.terminate().then(() => { resolve(seed); });
    };
    const watch = setInterval(() => {
      const now = Atomics.load(at, 0);
      if (now !== last) [last, since] = [now, Date.now()];
      const done = Math.floor((10 * (first + now - start)) / count);
      if (done > tenths) console.log(`${String((tenths = done))}0 %`);
      if (Date.now() - since < patience * 1000) return;
      fault(first + now, `no end after ${String(patience)} s`);
      end(first + now + 1);
    }, 1000);
    worker.on("message", (/** @type {Told} */ { seed, what, broken = [], answered }) => {
      if (seed !== undefined) fault(seed, `${what ?? ""}: ${broken.slice(0, 3).join("; ")}`);
      else answers += answered ?? 0;
    });
    worker.on("error", (error) => {
      const seed = first + Atomics.load(at, 0);
      fault(seed, `the thread ended: ${String(error)}`);
      end(seed + 1);
    });
    worker.on("exit", () => { end(start + count); });
  });
}
