// Random inputs for a calculation, within its own limits.
import { exact, toDecimal } from "../../src/core/amount.js";
import type { Definition, GivenDefinition } from "../../src/core/definition.js";
import type { DimensionName } from "../../src/core/dimensions.js";
import { amountOf } from "../../src/core/quantity.js";
import { writtenQuantity } from "../../src/core/limits.js";
import { fromBase } from "../../src/core/unit-scale.js";
import type { UnitCode } from "../../src/core/units.js";
import type { Draw } from "./random.js";

/** What a quantity of a dimension is like on a wall, where nothing says more: least, most, unit. */
const usual: Readonly<Record<DimensionName, readonly [least: number, most: number, unit: UnitCode]>> = {
  ratio: [0.02, 3, "ratio"],
  count: [1, 60, "count"],
  angle: [5, 85, "deg"],
  length: [0.05, 400, "in"],
  area: [0.5, 3000, "ft2"],
  volume: [0.05, 60, "ft3"],
  mass: [0.5, 4000, "lb"],
  time: [0.05, 200, "h"],
  temperature: [20, 110, "degF"],
  temperatureDifference: [1, 90, "degFDifference"],
  force: [5, 3000, "lbf"],
  pressure: [1, 90, "psf"],
  lineLoad: [1, 500, "lbf/ft"],
  speed: [1, 150, "mph"],
  areaPerTime: [1, 100, "ft2/h"],
  density: [20, 200, "lb/ft3"],
  arealMass: [0.5, 40, "lb/ft2"],
  linearMass: [0.5, 40, "lb/ft"],
  spreadingRate: [5, 400, "ft2/gal"],
  countPerLength: [2, 40, "/in"],
  countPerArea: [0.5, 12, "/ft2"],
  lengthPerArea: [0.5, 12, "ft/ft2"],
  volumePerMass: [0.002, 0.1, "ft3/lb"],
  evaporation: [0.01, 0.5, "lb/ft2/h"],
  permeance: [0.1, 50, "perm"],
  expansion: [2e-6, 1e-5, "/degF"],
  maturity: [10, 3000, "degFh"],
  perTime: [0.05, 3, "/d"],
};

/** The limits of an input in a unit; nothing where it has none. */
function limitIn(row: GivenDefinition, keys: readonly ("above" | "atLeast" | "below" | "atMost")[], unit: UnitCode): number | undefined {
  const text = keys.map((key) => row[key]).find((one) => one !== undefined);
  if (text === undefined) return undefined;
  const amount = text === 0 ? exact(0n) : amountOf(writtenQuantity(row.is, text, "limit"));
  return toDecimal(fromBase(amount, unit)).toNumber();
}

function drawValue(row: GivenDefinition, draw: Draw): { readonly value: string; readonly unit: string } {
  const [least, most, unit] = usual[row.is];
  const [lower, upper] = [limitIn(row, ["above", "atLeast"], unit), limitIn(row, ["below", "atMost"], unit)];
  const low = Math.max(least, lower ?? least);
  const from = upper !== undefined && low >= upper ? (lower ?? upper / 10) : low;
  const high = Math.min(most, upper ?? most);
  const until = high > from ? high : (upper ?? from * 10);
  const share = draw.whole(1, 9999) / 10000;
  const value = from > 0 && until / from > 50 ? from * (until / from) ** share : from + (until - from) * share;
  const rounded = row.is === "count" ? Math.max(1, Math.round(value)) : Number(value.toPrecision(5));
  return { value: String(rounded), unit };
}

/** Inputs for a calculation, one of each pair as chosen; one time in four a default is left to itself. */
export function drawInputs(definition: Definition, chosen: readonly string[], draw: Draw): Readonly<Record<string, unknown>> {
  const wanted = Object.entries(definition.given).filter(([name, row]) => (row.either === undefined || chosen.includes(name)) && (row.default === undefined || draw.whole(1, 4) > 1));
  return Object.fromEntries(wanted.map(([name, row]) => [name, drawValue(row, draw)]));
}
