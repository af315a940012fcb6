// Calculations whose formulas take a root, a logarithm or the like, to 40 digits: the time of one `.solve` from texts, and
// that of the same functions of the same numbers alone in decimal.js. `node tests/bench/roots.mjs [--write]` puts the table
// into docs/guide/how-fast.md as well.
import path from "node:path";
import { bundled } from "./bundle.mjs";
import { machine, median, stopwatch, writeBetween } from "./report.mjs";

const { catalogue, exactArithmetic, toDecimal, evaluate, parseFormula, amountOf } = await import(await bundled("tests/bench/roots-entry.ts"));
/** In microseconds. */
const goal = 150;
const rounds = 9;

/** Figures as a site has them: no root of them comes out even, and no angle is a right one. @type {Record<string, Record<string, string>>} */
const inputs = {
  "fasteners.elevation-factor-customary": { elevation: "5280 ft" },
  "fasteners.elevation-factor-si": { elevation: "1609 m" },
  "fasteners.exposure-b": { height: "42 ft" },
  "fasteners.exposure-c": { height: "42 ft" },
  "fasteners.exposure-d": { height: "42 ft" },
  "fasteners.pull-out-since-2022": { thickness: "0.0451 in", screwDiameter: "0.19 in", ultimateStress: "45 ksi" },
  "fasteners.raking-screws": { levelLength: "47 in", rise: "31-1/4 in", screwSpacing: "8 in" },
  "fasteners.screw-shear-in-steel": { thicknessUnderHead: "0.0566 in", ultimateStressUnderHead: "65 ksi", thickness: "0.0451 in", ultimateStress: "45 ksi", screwDiameter: "0.19 in" },
  "fasteners.wall-pressure-coefficient": { effectiveArea: "21 ft2", coefficientAt10: "-1.4", coefficientAt500: "-0.8", slopeFactor: "1" },
  "joints.concave-loss": { width: "3/8 in", toolRadius: "1/4 in", depth: "3/4 in" },
  "mortar.square-notch-bed": { depth: "1/2 in", width: "1/2 in", tooth: "1/2 in", angle: "55 deg" },
  "mortar.u-notch-bed": { depth: "3/4 in", width: "1/2 in", tooth: "1/2 in", angle: "55 deg" },
  "mortar.v-notch-bed": { depth: "3/16 in", width: "1/4 in", tooth: "0 in", angle: "55 deg" },
  "shapes.circular-segment": { width: "7 ft", rise: "2 ft" },
  "shapes.gable": { width: "23 ft", height: "6-1/2 ft" },
  "shapes.polygon-edge": { fromX: "4 ft", fromY: "8-1/2 ft", toX: "0 ft", toY: "5 ft" },
  "shapes.trapezoid": { width: "12 ft", leftHeight: "8 ft", rightHeight: "11-1/2 ft" },
  "timing.age-factor-by-arrhenius": { temperature: "63 degF", reference: "73 degF", activation: "5000 K" },
  "timing.age-factor-by-doubling": { temperature: "63 degF", reference: "73 degF" },
  "timing.concrete-strength-share": { age: "11 d", coefficient: "0.25" },
  "weather.dew-point": { airTemperature: "72.3 degF", humidity: "63 %" },
  "weather.evaporation-uno-si": { mortarTemperature: "29.5 degC", airTemperature: "25.3 degC", humidity: "47 %", wind: "11 km/h" },
  "weather.evaporation-uno-us": { mortarTemperature: "87.5 degF", airTemperature: "79.3 degF", humidity: "47 %", wind: "12 mph" },
  "weather.saturation-pressure": { temperature: "72.3 degF" },
  "weather.standard-pressure": { altitude: "1609 m" },
};

const inexact = ["sqrt", "ln", "log10", "exp", "sin", "asin"];

/** Whether a formula takes a root, a logarithm or the like. @param {any} formula @returns {boolean} */
function takesRoots(formula) {
  if (formula.kind === "power") return !/^-?\d+$/.test(formula.exponent) || takesRoots(formula.base);
  if (formula.kind === "call") return inexact.includes(formula.function) || formula.of.some(takesRoots);
  return [formula.left, formula.right, formula.of].some((part) => part !== undefined && takesRoots(part));
}

/** @param {any} one */
const isCalculationWithRoots = ({ definition }) =>
  definition !== undefined && Object.values(definition.steps).some(({ formula }) => Object.values(typeof formula === "string" ? [formula] : formula).some((text) => takesRoots(parseFormula(text))));

/** The functions that a solution took, with their numbers: each works itself out again in decimal.js. @param {any} solution @returns {{ name: string, again: () => unknown }[]} */
function functionsOf({ given, constants, steps }) {
  const values = new Map([...given, ...constants, ...steps].filter(({ value }) => value !== undefined).map(({ name, value }) => [name, amountOf(value)]));
  /** @type {{ name: string, again: () => unknown }[]} */
  const taken = [];
  const recording = { ...exactArithmetic };
  for (const name of inexact) {
    recording[name] = (/** @type {any} */ amount) => {
      const decimal = toDecimal(amount);
      taken.push({ name, again: name === "log10" ? () => decimal.log(10) : () => decimal[name]() });
      return exactArithmetic[name](amount);
    };
  }
  recording.power = (/** @type {any} */ base, /** @type {any} */ exponent) => {
    const result = exactArithmetic.power(base, exponent);
    const [decimal, to] = [toDecimal(base), toDecimal(exponent)];
    if (!to.isInteger()) taken.push({ name: "power", again: () => decimal.pow(to) });
    return result;
  };
  for (const { formula } of steps) evaluate(formula, values, recording);
  return taken;
}

/** @type {unknown} */
let kept;
/** @type {{ row: string, time: number }[]} */
const rows = [];
for (const one of catalogue.filter(isCalculationWithRoots)) {
  const own = inputs[one.id];
  if (own === undefined) throw new Error(`${one.id} takes a root and has no inputs here`);
  const functions = functionsOf(one.solve(own));
  const solve = stopwatch(() => {
    kept = one.solve(own);
  });
  const alone = stopwatch(() => {
    for (const { again } of functions) kept = again();
  });
  /** @type {{ solves: number[], alones: number[] }} */
  const { solves, alones } = { solves: [], alones: [] };
  for (let round = 0; round < rounds; round += 1) {
    solves.push(solve());
    alones.push(alone());
  }
  const [time, least] = [median(solves) / 1000, median(alones) / 1000];
  const row = `| ${one.definition.title} | ${functions.map(({ name }) => name).join(", ")} | ${time.toFixed(0)} µs | ${least.toFixed(0)} µs |`;
  console.error(row);
  rows.push({ row, time });
}

const slow = rows.filter(({ time }) => time > goal);
const table = [
  machine(),
  "",
  "| calculation | takes | `.solve` from texts | the functions alone, decimal.js |",
  "|---|---|---|---|",
  ...rows.map(({ row }) => row),
  "",
  slow.length === 0 ? `None is above the goal of ${goal} µs.` : `Above the goal of ${goal} µs: ${slow.length} of ${rows.length}.`,
].join("\n");
console.log(table);
if (kept === undefined) throw new Error("nothing was kept");
if (process.argv.includes("--write")) {
  writeBetween(path.join(import.meta.dirname, "../../docs/guide/how-fast.md"), "<!-- measured: roots -->", "<!-- end of the roots that were measured -->", table);
}
