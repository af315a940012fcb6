import { type UnitCode, unitParts, unitSymbol } from "../core/units.js";

/** A unit in words, for one and for more than one. */
export interface UnitName {
  readonly singular: string;
  readonly plural: string;
}

/** Names of the units that are no product of others; one whose plural takes an s has that left out. */
const names: Partial<Record<string, string | readonly [singular: string, plural: string]>> = {
  ratio: ["", ""], "%": ["percent", "percent"], count: ["", ""],
  rad: "radian", deg: "degree",
  mil: "mil", in: ["inch", "inches"], ft: ["foot", "feet"], yd: "yard",
  um: "micrometre", mm: "millimetre", cm: "centimetre", m: "metre",
  gal: "gallon", qt: "quart", pt: "pint", floz: "fluid ounce", mL: "millilitre", L: "litre",
  oz: "ounce", lb: "pound", ton: "short ton", g: "gram", ng: "nanogram", kg: "kilogram", t: "tonne",
  s: "second", min: "minute", h: "hour", d: "day",
  degF: ["degree Fahrenheit", "degrees Fahrenheit"], degC: ["degree Celsius", "degrees Celsius"], K: "kelvin",
  degFDifference: ["degree Fahrenheit", "degrees Fahrenheit"], degCDifference: ["degree Celsius", "degrees Celsius"], KDifference: "kelvin",
  lbf: ["pound-force", "pounds-force"], kip: "kip", N: "newton", kN: "kilonewton",
  psf: ["pound-force per square foot", "pounds-force per square foot"], psi: ["pound-force per square inch", "pounds-force per square inch"],
  ksi: ["kip per square inch", "kips per square inch"], inHg: ["inch of mercury", "inches of mercury"],
  Pa: "pascal", hPa: "hectopascal", kPa: "kilopascal", MPa: "megapascal",
  mph: ["mile per hour", "miles per hour"], km: "kilometre", perm: "perm",
  degFh: ["degree-hour Fahrenheit", "degree-hours Fahrenheit"], degCh: ["degree-hour Celsius", "degree-hours Celsius"], degCd: ["degree-day Celsius", "degree-days Celsius"],
};

const powers: Readonly<Record<number, string>> = { 2: "square ", 3: "cubic " };

/**
 * The name of a unit in words.
 *
 * @example
 * ```ts
 * unitName("lb/ft3").plural; // "pounds per cubic foot"
 * ```
 */
export function unitName(code: UnitCode): UnitName {
  const simple = simpleName(code);
  if (simple !== undefined) return simple;
  const parts = unitParts(code);
  const below = parts.filter(({ power }) => power < 0).map(({ name, power }) => ` per ${named(name, -power).singular}`).join("");
  const [above] = parts.filter(({ power }) => power > 0).map(({ name, power }) => named(name, power));
  return { singular: `${above?.singular ?? ""}${below}`.trim(), plural: `${above?.plural ?? ""}${below}`.trim() };
}

function simpleName(name: string): UnitName | undefined {
  const known = names[name];
  if (typeof known === "string") return { singular: known, plural: `${known}s` };
  return known === undefined ? undefined : { singular: known[0], plural: known[1] };
}

function named(name: string, power: number): UnitName {
  const { singular, plural } = simpleName(name) ?? { singular: unitSymbol(name as UnitCode), plural: unitSymbol(name as UnitCode) };
  const before = powers[power] ?? "";
  return { singular: before + singular, plural: before + plural };
}
