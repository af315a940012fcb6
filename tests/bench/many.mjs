// Many rows: what solveMany, solveRows and general-purpose libraries take of the same jobs, as multiples of plain numbers.
// A fresh process per contender; in it the floor is measured before and after each round, and the median of 9 rounds is
// shown. Ratios hold; nanoseconds indicate. `node tests/bench/many.mjs`; js-quantities is left out where it is not there.
/* eslint-disable @typescript-eslint/no-unsafe-call -- a bundle and libraries without types */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { bundled } from "./bundle.mjs";

const sets = 64;
/** @type {unknown} */
let kept;

/** @param {() => void} run @param {number} rows @returns {number} nanoseconds of processor time a row */
function timed(run, rows) {
  const start = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(start);
  return ((user + system) * 1000) / rows;
}

/** @param {number[]} times */
const median = (times) => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? NaN;

/** Rows of a job one by one, the results kept. @param {(row: any) => unknown} one @param {any[]} rows */
const eachRow = (one, rows) => {
  const results = new Array(rows.length);
  for (let i = 0; i < rows.length; i += 1) results[i] = one(rows[i]);
  kept = results;
};

/** The jobs in other libraries: film and joints, by hand. */
const others = {
  "decimal.js, 34 digits": async () => {
    const { Decimal } = await import("decimal.js");
    const D = Decimal.clone({ precision: 34 });
    return {
      film: (/** @type {any} */ { area, wet, coats, solids, loss }) => {
        const wetCoats = new D(wet).times(coats);
        const coating = new D(area).times(wetCoats).div(12000).times(1728).div(231).div(new D(1).minus(new D(loss).div(100)));
        return [wetCoats.times(solids).div(100), coating, coating.div(5).ceil()];
      },
      joints: (/** @type {any} */ { area, unitLength, unitHeight, joint, depth, waste, bagYield }) => {
        const module = new D(unitLength).plus(joint).times(new D(unitHeight).plus(joint));
        const perArea = module.minus(new D(unitLength).times(unitHeight)).div(module).times(depth).div(12);
        const volume = perArea.times(area);
        const gross = volume.times(new D(waste).div(100).plus(1));
        return [module, perArea, volume, gross, gross.div(bagYield).ceil()];
      },
    };
  },
  "fraction.js": async () => {
    const { Fraction } = await import("fraction.js");
    /** @param {number} number */
    const F = (number) => new Fraction(String(number));
    return {
      film: (/** @type {any} */ { area, wet, coats, solids, loss }) => {
        const wetCoats = F(wet).mul(F(coats));
        const coating = F(area).mul(wetCoats).div(12000).mul(1728).div(231).div(F(1).sub(F(loss).div(100)));
        return [wetCoats.mul(F(solids)).div(100), coating, coating.div(5).ceil()];
      },
      joints: (/** @type {any} */ { area, unitLength, unitHeight, joint, depth, waste, bagYield }) => {
        const module = F(unitLength).add(F(joint)).mul(F(unitHeight).add(F(joint)));
        const perArea = module.sub(F(unitLength).mul(F(unitHeight))).div(module).mul(F(depth)).div(12);
        const volume = perArea.mul(F(area));
        const gross = volume.mul(F(waste).div(100).add(1));
        return [module, perArea, volume, gross, gross.div(F(bagYield)).ceil()];
      },
    };
  },
  "mathjs units, numbers": async () => mathjsJobs("number"),
  "mathjs units, BigNumber": async () => mathjsJobs("BigNumber"),
  "js-quantities": async () => {
    const name = "js-quantities";
    const { default: Qty } = await import(name);
    return {
      film: (/** @type {any} */ { area, wet, coats, solids, loss }) => {
        const wetCoats = Qty(wet / 1000, "in").mul(coats);
        const coating = Qty(area, "ft2").mul(wetCoats).div(1 - loss / 100).to("gal");
        return [wetCoats.mul(solids / 100), coating, Math.ceil(coating.div(Qty(5, "gal")).scalar)];
      },
      joints: (/** @type {any} */ { area, unitLength, unitHeight, joint, depth, waste, bagYield }) => {
        const inch = (/** @type {number} */ value) => Qty(value, "in");
        const module = inch(unitLength).add(inch(joint)).mul(inch(unitHeight).add(inch(joint)));
        const perArea = module.sub(inch(unitLength).mul(inch(unitHeight))).div(module).mul(inch(depth));
        const volume = Qty(area, "ft2").mul(perArea).to("ft3");
        const gross = volume.mul(1 + waste / 100);
        return [module, perArea, volume, gross, Math.ceil(gross.div(Qty(bagYield, "ft3")).scalar)];
      },
    };
  },
};

/** @param {"number" | "BigNumber"} number */
async function mathjsJobs(number) {
  const { all, create } = await import("mathjs");
  const math = /** @type {any} */ (create(/** @type {any} */ (all), { number }));
  const n = number === "number" ? (/** @type {number} */ value) => value : (/** @type {number} */ value) => math.bignumber(value);
  const unit = (/** @type {number} */ value, /** @type {string} */ of) => math.unit(n(value), of);
  const { add, subtract, multiply, divide, ceil } = math;
  return {
    film: (/** @type {any} */ { area, wet, coats, solids, loss }) => {
      const wetCoats = multiply(unit(wet, "mil"), n(coats));
      const coating = divide(multiply(unit(area, "sqft"), wetCoats), subtract(n(1), divide(n(loss), n(100))));
      return [multiply(wetCoats, divide(n(solids), n(100))), coating, ceil(divide(coating, unit(5, "gallon")))];
    },
    joints: (/** @type {any} */ { area, unitLength, unitHeight, joint, depth, waste, bagYield }) => {
      const module = multiply(add(unit(unitLength, "in"), unit(joint, "in")), add(unit(unitHeight, "in"), unit(joint, "in")));
      const perArea = multiply(divide(subtract(module, multiply(unit(unitLength, "in"), unit(unitHeight, "in"))), module), unit(depth, "in"));
      const volume = multiply(unit(area, "sqft"), perArea);
      const gross = multiply(volume, add(n(1), divide(n(waste), n(100))));
      return [module, perArea, volume, gross, ceil(divide(gross, unit(bagYield, "cuft")))];
    },
  };
}

/** A plain reader: a number before a blank. @param {string} text */
const plainRead = (text) => Number.parseFloat(text);

/** One contender on one job: prints its time and that of the floor. @param {string} contender @param {string} jobName */
async function measure(contender, jobName) {
  const { solveMany, solveRows, columnsOf, manyJobs, drawFrom, quantity } = await import(await bundled("tests/bench/many-entry.ts"));
  const job = manyJobs.find((/** @type {any} */ one) => one.name === jobName);
  const draw = drawFrom(1);
  const drawn = Array.from({ length: sets }, () => job.draw(draw));
  const own = /^(solve|\.solve)/.test(contender);
  const count = contender === "solveMany" || contender === "solveRows" ? 16384 : own ? 1024 : 512;
  const rows = Array.from({ length: count }, (_, index) => drawn[index % sets]);
  const texts = drawn.map((row) => Object.fromEntries(Object.entries(row).map(([name, value]) => [name, `${value} ${job.units[name]}`])));
  const textRows = Array.from({ length: count }, (_, index) => texts[index % sets]);
  const names = Object.keys(job.units);
  const reads = contender === "solveRows" || contender === ".solve, texts";
  /** @param {any} row */
  const readPlain = (row) => {
    /** @type {Record<string, number>} */
    const read = {};
    for (const name of names) read[name] = plainRead(row[name]);
    return job.plain(read);
  };
  const floor = () => {
    if (reads) eachRow(readPlain, textRows);
    else eachRow(job.plain, rows);
  };
  const columns = columnsOf(job, rows);
  const quantities = drawn.map((row) => Object.fromEntries(Object.entries(row).map(([name, value]) => [name, quantity(job.run.definition.given[name].is, `${value} ${job.units[name]}`)])));
  /** @type {Record<string, () => void>} */
  const ours = {
    solveMany: () => void (kept = solveMany(job.run, columns)),
    solveRows: () => void (kept = solveRows(job.run, textRows)),
    ".solve, texts": () => {
      eachRow((index) => job.run.solve(texts[index % sets]), [...rows.keys()]);
    },
    ".solve, quantities": () => {
      eachRow((index) => job.run.solve(quantities[index % sets]), [...rows.keys()]);
    },
  };
  const jobs = own ? undefined : /** @type {any} */ (await others[/** @type {keyof typeof others} */ (contender)]());
  const run = () => {
    if (jobs === undefined) ours[contender]?.();
    else eachRow(jobs[jobName], rows);
  };
  /** Short runs are repeated, so that the clock of the process can see them. @param {() => void} one */
  const often = (one) => {
    const times = Math.max(1, Math.ceil(16384 / count / (own || one === floor ? 1 : 8)));
    return timed(() => {
      for (let i = 0; i < times; i += 1) one();
    }, count * times);
  };
  for (let warm = 0; warm < 3; warm += 1) {
    often(floor);
    often(run);
  }
  /** @type {{ ratios: number[], times: number[], floors: number[] }} */
  const { ratios, times, floors } = { ratios: [], times: [], floors: [] };
  for (let round = 0; round < 9; round += 1) {
    const before = often(floor);
    const time = often(run);
    const around = (before + often(floor)) / 2;
    ratios.push(time / around);
    times.push(time);
    floors.push(around);
  }
  console.log(JSON.stringify({ ratio: median(ratios), time: median(times), floor: median(floors), kept: typeof kept }));
}

const [contender, jobName] = process.argv.slice(2);
if (contender !== undefined && jobName !== undefined) await measure(contender, jobName);
else {
  console.log("times plain numbers (nanoseconds a row)".padEnd(42), ...["film", "joints", "wall"].map((name) => name.padStart(20)));
  for (const name of ["solveMany", "solveRows", ".solve, texts", ".solve, quantities", ...Object.keys(others)]) {
    const cells = ["film", "joints", ...(name in others ? [] : ["wall"])].map((job) => {
      const { stdout, status } = spawnSync(process.execPath, [fileURLToPath(import.meta.url), name, job], { encoding: "utf8" });
      if (status !== 0) return "not there".padStart(20);
      const { ratio, time } = JSON.parse(stdout);
      return `${ratio.toFixed(ratio < 20 ? 1 : 0)} (${time.toFixed(0)})`.padStart(20);
    });
    console.log(name.padEnd(42), ...cells);
  }
  console.log("solveRows and .solve from texts stand beside plain numbers that read the texts too.");
}
