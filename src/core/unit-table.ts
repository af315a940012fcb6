import type { DimensionName } from "./dimensions.js";

/** Which units a reader sees: those of the United States or the International System. */
export type System = "us" | "si";

/** A unit's texts: what it is equal to, where its code does not say so, then how else it is written. */
export type UnitTexts = readonly string[];

/**
 * The one table of units, by dimension and system. The first text of a unit says what it is equal to, in other units
 * and exact numbers; a base unit of the International System is equal to nothing else, and a code such as `ft2/gal`
 * says it itself. The other texts are further spellings.
 *
 * Factors are exact and chained from definitions: the inch is 25.4 mm, the US gallon 231 in³, the pound 0.45359237 kg,
 * standard gravity 9.80665 m/s², the conventional inch of mercury 13 595.1 kg/m³ × 9.80665 m/s² × 1 in. A code is
 * unique in the whole table; a spelling only within its dimension, so `psf` is a pressure where a pressure is wanted
 * and a weight per area where that is.
 */
export const units = {
  ratio: {
    both: { ratio: [], "%": ["ratio/100", "percent", "pct"] },
  },
  count: {
    both: { count: ["", "each", "ea", "pieces", "pcs"] },
  },
  angle: {
    both: { rad: ["", "radian", "radians"], deg: ["pi/180 * rad", "degree", "degrees", "°"] },
  },
  length: {
    us: {
      mil: ["in/1000", "mils"],
      in: ["254/10000 * m", "inch", "inches", '"', "″"],
      ft: ["12 * in", "foot", "feet", "'", "′", "lf"],
      yd: ["3 * ft", "yard", "yards"],
    },
    si: {
      um: ["mm/1000", "micrometre", "micrometres", "µm", "micron", "microns"],
      mm: ["m/1000", "millimetre", "millimetres"],
      cm: ["m/100", "centimetre", "centimetres"],
      m: ["", "metre", "metres"],
    },
  },
  area: {
    us: { in2: [], ft2: ["", "sf"], yd2: [] },
    si: { mm2: [], cm2: [], m2: [] },
  },
  volume: {
    us: {
      in3: [],
      ft3: ["", "cf"],
      yd3: ["", "cy"],
      gal: ["231 * in3", "gallon", "gallons"],
      qt: ["gal/4", "quart", "quarts"],
      pt: ["gal/8", "pint", "pints"],
      floz: ["gal/128", "fl oz", "fluid ounce", "fluid ounces"],
    },
    si: { mL: ["L/1000", "millilitre", "millilitres", "ml"], L: ["m3/1000", "litre", "litres", "l"], mm3: [], cm3: [], m3: [] },
  },
  mass: {
    us: {
      oz: ["lb/16", "ounce", "ounces"],
      lb: ["45359237/100000000 * kg", "pound", "pounds", "lbs"],
      ton: ["2000 * lb", "short ton", "short tons", "tons"],
    },
    si: { g: ["kg/1000", "gram", "grams"], kg: ["", "kilogram", "kilograms"], t: ["1000 * kg", "tonne", "tonnes"] },
  },
  time: {
    both: {
      s: ["", "second", "seconds", "sec"],
      min: ["60 * s", "minute", "minutes", "mins"],
      h: ["60 * min", "hour", "hours"],
      d: ["24 * h", "day", "days"],
    },
  },
  temperature: {
    us: { degF: ["5/9 * K", "°F", "F"] },
    si: { degC: ["K", "°C", "C"], K: ["", "kelvin", "kelvins"] },
  },
  temperatureDifference: {
    us: { degFDifference: ["5/9 * KDifference", "degF", "°F", "F"] },
    si: { degCDifference: ["KDifference", "degC", "°C", "C"], KDifference: ["", "K", "kelvin", "kelvins"] },
  },
  force: {
    us: { lbf: ["lb * 980665/100000 * m/s2", "pound-force", "pounds-force", "lb", "lbs"], kip: ["1000 * lbf", "kips"] },
    si: { N: ["kg * m/s2", "newton", "newtons"], kN: ["1000 * N", "kilonewton", "kilonewtons"] },
  },
  pressure: {
    us: {
      psf: ["lbf/ft2", "lbf/ft2", "lb/ft2"],
      psi: ["lbf/in2", "lbf/in2", "lb/in2"],
      ksi: ["1000 * psi", "kip/in2"],
      inHg: ["135951/10 * kg/m3 * 980665/100000 * m/s2 * in", "inch of mercury", "inches of mercury"],
    },
    si: { Pa: ["N/m2", "N/m2", "pascal", "pascals"], hPa: ["100 * Pa", "mbar", "hectopascals"], kPa: ["1000 * Pa", "kN/m2", "kilopascals"], MPa: ["N/mm2", "N/mm2", "megapascals"] },
  },
  lineLoad: {
    us: { "lbf/ft": ["", "plf", "lb/ft"] },
    si: { "N/m": [], "kN/m": [] },
  },
  speed: {
    us: { mph: ["5280 * ft/h", "mi/h", "miles/h"], "ft/min": [], "ft/h": [] },
    si: { "m/s": [], "km/h": ["1000 * m/h", "kilometres/h"], "m/h": [] },
  },
  areaPerTime: {
    us: { "ft2/h": [] },
    si: { "m2/h": [] },
  },
  density: {
    us: { "lb/ft3": ["", "pcf"], "lb/gal": [] },
    si: { "kg/m3": [], "kg/L": ["", "g/cm3"] },
  },
  arealMass: {
    us: { "lb/ft2": ["", "psf"] },
    si: { "kg/m2": [] },
  },
  linearMass: {
    us: { "lb/ft": [] },
    si: { "kg/m": [] },
  },
  spreadingRate: {
    us: { "ft2/gal": [] },
    si: { "m2/L": [] },
  },
  countPerLength: {
    us: { "/in": [], "/ft": [] },
    si: { "/mm": [], "/m": [] },
  },
  countPerArea: {
    us: { "/in2": [], "/ft2": [] },
    si: { "/m2": [] },
  },
  lengthPerArea: {
    us: { "ft/ft2": [] },
    si: { "m/m2": [] },
  },
  volumePerMass: {
    us: { "ft3/lb": [] },
    si: { "L/kg": [] },
  },
  evaporation: {
    us: { "lb/ft2/h": [] },
    si: { "kg/m2/h": [] },
  },
  permeance: {
    us: { perm: ["lb/7000/ft2/h/inHg", "perms"] },
    si: { "ng/s/m2/Pa": ["kg/1000000000000/s/m2/Pa", "ng/(s m2 Pa)"] },
  },
  expansion: {
    us: { "/degF": ["ratio/degFDifference", "/°F"] },
    si: { "/degC": ["ratio/degCDifference", "/°C", "/K"] },
  },
  maturity: {
    us: { degFh: ["degFDifference * h", "degF h", "°F h", "degree-hours fahrenheit"] },
    si: { degCh: ["KDifference * h", "degC h", "°C h", "K h", "degree-hours celsius"], degCd: ["KDifference * d", "degC d", "°C d", "degree-days celsius"] },
  },
  perTime: {
    both: { "/h": [], "/d": [] },
  },
} as const satisfies Record<DimensionName, Partial<Record<System | "both", Readonly<Record<string, UnitTexts>>>>>;

/** How units are written whose code is not what is printed. */
export const symbols: Partial<Record<string, string>> = {
  ratio: "",
  count: "",
  floz: "fl oz",
  degFDifference: "degF",
  degCDifference: "degC",
  KDifference: "K",
  "ng/s/m2/Pa": "ng/(s m2 Pa)",
  degFh: "degF h",
  degCh: "degC h",
  degCd: "degC d",
};

/** Where the scale of a temperature begins, in kelvins. */
export const zeros: Partial<Record<string, string>> = { degF: "45967/180", degC: "5463/20" };

type Table = typeof units;
type KeysOfEach<T> = T extends unknown ? keyof T : never;
type CodesBy = { [D in DimensionName]: KeysOfEach<Table[D][keyof Table[D]]> & string };

/** The codes of the units that measure a dimension. */
export type UnitOf<D extends DimensionName> = CodesBy[D];

/** The code of a unit: its key in the table, unique over all dimensions. */
export type UnitCode = CodesBy[DimensionName];

type FurtherTexts<Group> = Group extends unknown
  ? { [Code in keyof Group]: Group[Code] extends readonly [unknown, ...infer Further] ? Further[number] : never }[keyof Group]
  : never;
type LengthName = "in" | "ft" | "yd" | "mm" | "cm" | "m";
type LengthPower<D> = D extends "area" ? `sq ${LengthName}` | `${LengthName}²` : D extends "volume" ? `cu ${LengthName}` | `${LengthName}³` : never;
type SpellingsBy = { [D in DimensionName]: CodesBy[D] | (FurtherTexts<Table[D][keyof Table[D]]> & string) | LengthPower<D> };

/** Every listed spelling of the units of a dimension; the reader takes more (other cases, blanks, `per`, plurals). */
export type SpellingOf<D extends DimensionName> = SpellingsBy[D];
