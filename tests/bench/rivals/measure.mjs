// One contender on one job, in a process of its own: `node measure.mjs contender job` prints its figures as JSON.
// The floor, the same arithmetic in plain numbers, is measured before and after each of 9 rounds; medians are told.
import { median, stopwatch } from "../report.mjs";
import { contenders, readJobs, textsOf } from "./contenders.mjs";

const sets = 64;
const rounds = 9;
/** @type {unknown} */
let kept;

/** Nanoseconds a row. @param {(rows: number) => unknown} run @param {number} rows */
function stopwatchOfRows(run, rows) {
  const watch = stopwatch(() => {
    kept = run(rows);
  });
  return () => watch() / rows;
}

/** Reads as little as will do: digits, before a blank. @param {any} job @param {Record<string, string>} row */
function plainRead(job, row) {
  /** @type {Record<string, number>} */
  const read = {};
  for (const name in job.units) read[name] = Number.parseFloat(row[name] ?? "");
  return job.plain(read);
}

/** How the answers differ from the exact ones: fails where no rounding explains it, and counts the counts that are off. @param {any} job @param {any[]} drawn @param {import("./contenders.mjs").Contender} contender */
function wrongCounts(job, drawn, contender) {
  let [wrong, all] = [0, 0];
  textsOf(job, drawn).forEach((texts, index) => {
    const exact = job.run(texts);
    const answers = contender.answers(index);
    const off = job.counts.filter((/** @type {string} */ count) => answers[count] !== exact[count].toNumber());
    for (const [name, value] of Object.entries(answers)) {
      const right = exact[name].toNumber(exact[name].unit);
      if (!job.counts.includes(name)) {
        // What a count that is off leads to is not held against the answer as well.
        const follows = off.some((/** @type {string} */ count) => job.run.definition.steps[name].formula.includes(count));
        if (!follows && !(Math.abs(value - right) <= 1e-8 * Math.abs(right))) throw new Error(`${job.name}, ${name}: ${value} is not ${right} of ${JSON.stringify(texts)}`);
        continue;
      }
      all += 1;
      if (value !== right) wrong += 1;
    }
  });
  // A round-up that goes wrong now and then is rounding; one in twenty is another formula.
  if (wrong * 20 > all) throw new Error(`${job.name}: ${wrong} of ${all} counts differ`);
  return { wrong, all };
}

const [name = "", jobName] = process.argv.slice(2);
const ours = await readJobs();
const job = ours.manyJobs.find((/** @type {any} */ one) => one.name === jobName);
const draw = ours.drawFrom(1);
const drawn = Array.from({ length: sets }, () => job.draw(draw));
const contender = await contenders[name]?.(job, drawn, ours);
if (contender === undefined) throw new Error(`there is no contender "${name}"`);

const counts = wrongCounts(job, drawn, contender);
const rows = contender.together ? 16384 : 512;
const texts = textsOf(job, drawn);
const [source, one] = contender.reads ? [texts, (/** @type {any} */ row) => plainRead(job, row)] : [drawn, job.plain];
const floor = stopwatchOfRows((count) => {
  const results = new Array(count);
  for (let index = 0; index < count; index += 1) results[index] = one(source[index % sets]);
  return results;
}, rows);
const watch = stopwatchOfRows(contender.run, rows);
/** @type {{ ratios: number[], times: number[] }} */
const { ratios, times } = { ratios: [], times: [] };
floor();
watch();
for (let round = 0; round < rounds; round += 1) {
  const before = floor();
  const time = watch();
  ratios.push((2 * time) / (before + floor()));
  times.push(time);
}
console.log(JSON.stringify({ ratio: median(ratios), time: median(times), ...counts, kept: typeof kept }));
