// Counts of many rows against the same formulas in big whole numbers.
import { solveMany } from "../../src/many/index.js";
import { columnsOf, type ManyJob, type PlainRow } from "./many-jobs.js";
import { drawFrom } from "./random.js";
import { walkOf } from "./whole-number-walk.js";

export { manyJobs } from "./many-jobs.js";

export interface Checked {
  readonly wrong: readonly string[];
  /** Counts that plain numbers get wrong on the way. */
  readonly wrongInPlainNumbers: number;
}

/** Draws so many rows of a job and compares every count. */
export function checkMany(job: ManyJob, rows: number, seed: number): Checked {
  const draw = drawFrom(seed);
  const wrong: string[] = [];
  let wrongInPlainNumbers = 0;
  const walk = walkOf(job.run.definition);
  for (let done = 0; done < rows; done += 20_000) {
    const drawn = Array.from({ length: Math.min(20_000, rows - done) }, () => job.draw(draw));
    const { answers, problems } = solveMany(job.run, columnsOf(job, drawn) as never);
    if (problems.length > 0) wrong.push(`${String(problems.length)} rows have problems`);
    drawn.forEach((row, index) => {
      const exact = walk(row);
      const plain = job.plain(row as never);
      for (const count of job.counts) {
        const [wanted = 0n] = exact.get(count) ?? [];
        const given = (answers as Readonly<Record<string, { readonly values: Float64Array }>>)[count]?.values[index];
        if (given !== Number(wanted)) wrong.push(`${count} of ${JSON.stringify(row)}: ${String(given)} and not ${String(wanted)}`);
        if (plain[count] !== Number(wanted)) wrongInPlainNumbers += 1;
      }
    });
  }
  return { wrong: wrong.slice(0, 20), wrongInPlainNumbers };
}

/** Rows whose decimals are too many for whole numbers, so that the bounds are put to use. */
export function roughened(row: PlainRow, draw: ReturnType<typeof drawFrom>, counts: readonly string[]): PlainRow {
  return Object.fromEntries(Object.entries(row).map(([name, value]) => [name, counts.includes(name) ? value : value * (1 + draw.whole(1, 2 ** 30) * 2 ** -46)]));
}
