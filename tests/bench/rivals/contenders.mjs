// Who does the jobs: plain numbers, libraries and ourselves. Each is made in a process of its own.
import { bundled } from "../bundle.mjs";
import { jobsWithUnits } from "./jobs-with-units.mjs";
import { jobsWithoutUnits } from "./jobs-without-units.mjs";
import { jsQuantities, mathjsUnits } from "./unit-libraries.mjs";

/**
 * A contender on a job.
 * @typedef {object} Contender
 * @property {(rows: number) => unknown} run - works out so many rows and gives what it keeps of them
 * @property {(index: number) => Record<string, number>} answers - the results of one set as numbers in the units of the job
 * @property {boolean} [reads] - whether it reads texts, so that the floor has to do so too
 * @property {boolean} [together] - whether it works out many rows in one call
 */

/** A job with its inputs, as the sources have it. @returns {Promise<any>} */
export async function readJobs() {
  return await import(await bundled("tests/bench/many-entry.ts"));
}

/** @param {any} job the job @param {any[]} drawn its sets @param {(row: any) => any} one @param {(result: any, unit: string) => number} read @returns {Contender} */
function rowByRow(job, drawn, one, read) {
  const units = /** @type {[string, string][]} */ (Object.entries(job.run.definition.steps).map(([name, { is, unit = is }]) => [name, [unit].flat()[0]]));
  return {
    run(rows) {
      const results = new Array(rows);
      for (let index = 0; index < rows; index += 1) results[index] = one(drawn[index % drawn.length]);
      return results;
    },
    answers: (index) => {
      const results = one(drawn[index]);
      return Object.fromEntries(units.map(([name, unit]) => [name, read(results[name], unit)]));
    },
  };
}

/** The sets as people type them. @param {any} job @param {any[]} drawn */
export const textsOf = (job, drawn) => drawn.map((row) => Object.fromEntries(Object.entries(row).map(([name, value]) => [name, job.units[name] === "count" ? String(value) : `${value} ${job.units[name]}`])));

/** What is handed to solveMany or solveRows, made once: it is what is given. @type {unknown} */
let handed;

/** A row of what solveMany or solveRows gives. @param {any} many @param {number} row @returns {Record<string, number>} */
const rowOf = ({ answers }, row) => Object.fromEntries(Object.entries(answers).map(([name, { values }]) => [name, values[row]]));

/** What reads a number back of a quantity. @param {any} quantity @param {string} unit */
const inUnit = (quantity, unit) => quantity.toNumber(unit);

/** @type {Record<string, (job: any, drawn: any[], ours: any) => Contender | Promise<Contender>>} */
export const contenders = {
  "plain numbers": (job, drawn) => rowByRow(job, drawn, job.plain, Number),
  "`solveMany`, columns": (job, drawn, { solveMany, columnsOf }) => ({
    together: true,
    run(rows) {
      handed ??= columnsOf(job, Array.from({ length: rows }, (_, index) => drawn[index % drawn.length]));
      return solveMany(job.run, handed);
    },
    answers: (index) => rowOf(solveMany(job.run, columnsOf(job, drawn)), index),
  }),
  "`solveRows`, rows of text": (job, drawn, { solveRows }) => {
    const texts = textsOf(job, drawn);
    return {
      together: true,
      reads: true,
      run(rows) {
        handed ??= Array.from({ length: rows }, (_, index) => texts[index % texts.length]);
        return solveRows(job.run, handed);
      },
      answers: (index) => rowOf(solveRows(job.run, texts), index),
    };
  },
  "`.solve`, quantities": (job, drawn, { quantity }) => {
    const sets = textsOf(job, drawn).map((texts) => Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, quantity(job.run.definition.given[name].is, text)])));
    return rowByRow(job, sets, (set) => job.run.solve(set).answers, inUnit);
  },
  "`.solve`, texts": (job, drawn) => ({ ...rowByRow(job, textsOf(job, drawn), (set) => job.run.solve(set).answers, inUnit), reads: true }),
  "decimal.js, 34 digits": async (job, drawn) => {
    const { Decimal } = await import("decimal.js");
    const Own = Decimal.clone({ precision: 34 });
    return rowByRow(job, drawn, /** @type {(row: any) => any} */ (jobsWithoutUnits((value) => new Own(value))[job.name]), Number);
  },
  "mathjs `unit()`, numbers": async (job, drawn) => byUnits(job, drawn, await mathjsUnits("number")),
  "mathjs `unit()`, BigNumber": async (job, drawn) => byUnits(job, drawn, await mathjsUnits("BigNumber")),
  "js-quantities": async (job, drawn) => byUnits(job, drawn, await jsQuantities()),
};

/** @param {any} job @param {any[]} drawn @param {import("./jobs-with-units.mjs").Units} units */
const byUnits = (job, drawn, units) => rowByRow(job, drawn, /** @type {any} */ (jobsWithUnits(units))[job.name], units.read);
