// Every count of a million random jobs of each kind, by solveMany and by big whole numbers: `node tests/bench/many-counts.mjs`.
// A first argument says how many jobs, a second with which seed.
 
import { bundled } from "./bundle.mjs";

const { checkMany, manyJobs } = await import(await bundled("tests/support/check-many.ts"));
const [rows = "1000000", seed = "2026"] = process.argv.slice(2);
for (const job of manyJobs) {
  const { wrong, wrongInPlainNumbers } = checkMany(job, Number(rows), Number(seed));
  console.log(`${job.name}: ${rows} jobs, ${job.counts.length} counts each; wrong ${wrong.length}, in plain numbers ${wrongInPlainNumbers}`);
  for (const one of wrong) console.log(`  ${one}`);
  if (wrong.length > 0) process.exitCode = 1;
}
