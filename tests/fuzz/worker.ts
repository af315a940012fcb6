// The long run's thread: it says in shared memory which seed it is at, so that the watcher can name one that hangs.
import { parentPort, workerData } from "node:worker_threads";
import { inspect } from "node:util";
import { trial } from "./trial.js";

const { first, count, at } = workerData as { readonly first: number; readonly count: number; readonly at: Int32Array };
/** A call that takes more than this of the processor's time is slow. */
const slow = 2_000_000;

let answered = 0;
for (let done = 0; done < count; done += 1) {
  Atomics.store(at, 0, done);
  const before = process.cpuUsage();
  const outcome = await trial(first + done);
  // One seed by itself is looked at.
  if (count === 1) console.log(inspect(outcome, { depth: 8, maxStringLength: 200, maxArrayLength: 20, breakLength: 150 }));
  const { user } = process.cpuUsage(before);
  if (outcome.answered) answered += 1;
  const broken = [...outcome.broken, ...(user > slow ? [`took ${String(Math.round(user / 1000))} ms`] : [])];
  if (broken.length > 0) parentPort?.postMessage({ seed: first + done, what: outcome.what, broken });
}
parentPort?.postMessage({ answered });
