import { noUnits, timesUnits, unitPowers, type UnitProduct, unitProduct } from "./unit-product.js";
import { type UnitCode, unitSystem } from "./units.js";

/** The family of units a step works in: for each simple unit the one that takes its place, where they clash. */
export type Family = ReadonlyMap<UnitCode, UnitProduct>;

const forces: readonly UnitCode[] = ["lbf", "kip", "N", "kN"];

/** What simple units measure, so that two of a kind are seen to clash; force stands by itself. */
function touches(code: UnitCode): readonly string[] {
  if (forces.includes(code)) return ["force"];
  if (isOfForce(code)) return ["force", "length"];
  return ["length", "mass", "time", "temperature", "money", "labour"].filter((_, index) => unitPowers(code)[index] !== 0);
}

/** Whether a unit is of force and length, as ksi is; it is then never taken apart into mass and time. */
function isOfForce(code: UnitCode): boolean {
  const [, mass, time] = unitPowers(code);
  return mass !== 0 && time === -2 * mass;
}

/** The family of these units. */
export function familyOf(units: readonly UnitCode[]): Family {
  const atoms = [...new Set(units.flatMap((unit) => [...unitProduct(unit).keys()]))];
  const clash = atoms.some((one, index) => atoms.slice(index + 1).some((other) => touches(one).some((what) => touches(other).includes(what))));
  if (!clash) return new Map();
  const metric = atoms.every((code) => unitSystem(code) !== "us");
  const pick = (order: readonly UnitCode[], fallback: UnitCode): UnitCode => order.find((code) => atoms.includes(code)) ?? fallback;
  const length = atoms.some((code) => unitPowers(code)[0] > 1) ? (metric ? "m" : "ft") : pick(metric ? ["m", "mm"] : ["ft", "in"], metric ? "m" : "ft");
  const mass = pick(metric ? ["kg", "t"] : ["lb", "ton"], metric ? "kg" : "lb");
  const time = pick(["h", "min", "d", "s"], "h");
  const degree = metric ? "degCDifference" : "degFDifference";
  return new Map(atoms.map((code) => [code, inFamily(code, { length, mass, time, degree, force: metric ? "N" : "lbf" })]));
}

interface Chosen {
  readonly length: UnitCode;
  readonly mass: UnitCode;
  readonly time: UnitCode;
  readonly degree: UnitCode;
  readonly force: UnitCode;
}

function inFamily(code: UnitCode, { length, mass, time, degree, force }: Chosen): UnitProduct {
  if (forces.includes(code)) return new Map([[force, 1]]);
  const [l, m, t, k] = unitPowers(code);
  if (isOfForce(code)) return timesUnits(new Map([[force, m]]), new Map([[length, l - m]]));
  return [[length, l] as const, [mass, m] as const, [time, t] as const, [degree, k] as const].reduce<UnitProduct>(
    (product, [unit, power]) => timesUnits(product, new Map([[unit, power]])),
    noUnits,
  );
}
