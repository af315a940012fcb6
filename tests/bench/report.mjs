// What the benches that write a table share: the stopwatch, the machine, the place in the page.
import { readFileSync, writeFileSync } from "node:fs";
import os from "node:os";

/** So long a measurement takes at least, in nanoseconds of processor time. */
const least = 60e6;

/** Processor time in nanoseconds, so that other work on the machine counts for less. */
export function processorTime() {
  const { user, system } = process.cpuUsage();
  return (user + system) * 1000;
}

/** A way to time some work, repeated for long enough. @param {() => void} work @returns {() => number} nanoseconds of processor time each */
export function stopwatch(work) {
  const timed = (/** @type {number} */ times) => {
    const start = processorTime();
    for (let time = 0; time < times; time += 1) work();
    return processorTime() - start;
  };
  let times = 1;
  for (; timed(times) < least; times *= 2);
  return () => timed(times) / times;
}

/** @param {number[]} numbers */
export const median = (numbers) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? NaN;

/** The day, Node, the machine and its load. */
export function machine() {
  const [processor] = os.cpus();
  const load = os.loadavg().map((one) => one.toFixed(1));
  return `Measured on ${new Date().toISOString().slice(0, 10)} with Node ${process.version} on ${os.cpus().length} cores (${processor?.model.trim() ?? "unknown"}, ${os.platform()}); load of the machine at the end, over 1, 5 and 15 minutes: ${load.join(", ")}.`;
}

/** Writes a text into a page, between two marks. @param {string} page @param {string} begin @param {string} end @param {string} written */
export function writeBetween(page, begin, end, written) {
  const text = readFileSync(page, "utf8");
  const [before, after] = [text.indexOf(begin), text.indexOf(end)];
  if (before < 0 || after < 0) throw new Error(`${page} has no place for the table`);
  writeFileSync(page, `${text.slice(0, before + begin.length)}\n\n${written}\n\n${text.slice(after)}`);
}
