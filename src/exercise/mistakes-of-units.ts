import { type Amount, exactArithmetic as arithmetic } from "../core/amount.js";
import { amountOf, isQuantity } from "../core/quantity.js";
import type { Solution } from "../core/solution.js";
import { type Conversion, workings } from "../core/working.js";
import { unitScale } from "../core/unit-scale.js";
import type { Slip } from "./mistake.js";

/** Conversions of areas and volumes, and the one of lengths that is taken in their place. */
const ofLength: Readonly<Record<string, string>> = { "144": "12", "1728": "12", "9": "3", "27": "3", "1000000": "1000", "1000000000": "1000", "10000": "100" };

/** Conversions left out, or those of lengths taken for areas; a percentage put in as it stands; degrees taken for radians. */
export function changesOfUnits(solution: Solution): readonly Slip[] {
  const steps = workings(solution, { digits: 24 }).flatMap(({ step, conversions, shown }): Slip[] => [
    ...conversions.flatMap((one) => slips(one, one.name ?? "", (by) => ({ operand: { step: step.name, name: one.name ?? "", amount: (amount) => arithmetic.multiply(amount, by) } }))),
    ...(shown === undefined || shown.to.unit === "%" ? [] : slips(shown, step.name, (by) => ({ result: (name, amount) => (name === step.name ? arithmetic.multiply(amount, by) : amount) }))),
  ]);
  const given = solution.given.flatMap(({ name, value }): Slip[] => {
    if (!isQuantity(value) || (value.unit !== "%" && value.unit !== "deg")) return [];
    const asIs = arithmetic.divide(amountOf(value), unitScale(value.unit).size);
    const change = { inputs: new Map([[name, asIs]]) };
    const number = value.to().toString();
    return value.unit === "%"
      ? [{ kind: "percentAsNumber", says: `${name} put in as ${number}, not as ${value.to("ratio").toString()}`, change }]
      : [{ kind: "degreesAsRadians", says: `${name} put in as ${number} rad, not as ${number} deg`, change }];
  });
  return [...steps, ...given];
}

/** The slips that one conversion invites; angles and percentages are told apart from them. */
function slips({ from, operator, factor, to }: Conversion, name: string, change: (by: Amount) => Slip["change"]): readonly Slip[] {
  if ([from, to].some(({ unit }) => ["deg", "rad", "%"].includes(unit))) return [];
  const by = arithmetic.literal(factor.number);
  // What was to be divided is too large by the factor where that is left out, what was to be multiplied too small.
  const leftOut = operator === "/" ? by : arithmetic.divide(arithmetic.literal("1"), by);
  const number = Number(factor.number).toPrecision(6).replace(/\.?0+$/, "");
  const left: Slip = { kind: "conversionLeftOut", says: `${name}: the ${number} of ${number} ${factor.unit} left out`, change: change(leftOut) };
  const length = ofLength[factor.number];
  if (length === undefined) return [left];
  const short = arithmetic.divide(by, arithmetic.literal(length));
  const instead: Slip = {
    kind: "conversionOfLength",
    says: `${name}: ${length} taken for ${factor.number} ${factor.unit}`,
    change: change(operator === "/" ? short : arithmetic.divide(arithmetic.literal("1"), short)),
  };
  return [left, instead];
}
