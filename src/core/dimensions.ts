import { type Formula, formulaText } from "./formula.js";

/** Powers of length, mass, time, temperature, money and labour. */
export type Powers = readonly [number, number, number, number, number, number];

/**
 * The dimensions by name. Names with equal powers are still different at an input: a count is no ratio. Temperatures
 * (points on a scale) and temperature differences are two dimensions, and so is an angle beside a bare ratio.
 */
export const dimensions = {
  ratio: [0, 0, 0, 0, 0, 0],
  count: [0, 0, 0, 0, 0, 0],
  angle: [0, 0, 0, 0, 0, 0],
  length: [1, 0, 0, 0, 0, 0],
  area: [2, 0, 0, 0, 0, 0],
  volume: [3, 0, 0, 0, 0, 0],
  mass: [0, 1, 0, 0, 0, 0],
  time: [0, 0, 1, 0, 0, 0],
  temperature: [0, 0, 0, 1, 0, 0],
  temperatureDifference: [0, 0, 0, 1, 0, 0],
  force: [1, 1, -2, 0, 0, 0],
  pressure: [-1, 1, -2, 0, 0, 0],
  lineLoad: [0, 1, -2, 0, 0, 0],
  speed: [1, 0, -1, 0, 0, 0],
  areaPerTime: [2, 0, -1, 0, 0, 0],
  density: [-3, 1, 0, 0, 0, 0],
  arealMass: [-2, 1, 0, 0, 0, 0],
  linearMass: [-1, 1, 0, 0, 0, 0],
  spreadingRate: [-1, 0, 0, 0, 0, 0],
  countPerLength: [-1, 0, 0, 0, 0, 0],
  countPerArea: [-2, 0, 0, 0, 0, 0],
  lengthPerArea: [-1, 0, 0, 0, 0, 0],
  volumePerMass: [3, -1, 0, 0, 0, 0],
  evaporation: [-2, 1, -1, 0, 0, 0],
  permeance: [-1, 0, 1, 0, 0, 0],
  expansion: [0, 0, 0, -1, 0, 0],
  maturity: [0, 0, 1, 1, 0, 0],
  perTime: [0, 0, -1, 0, 0, 0],
} as const satisfies Record<string, Powers>;

/** The name of a dimension: `"length"`, `"area"`, `"temperatureDifference"` … */
export type DimensionName = keyof typeof dimensions;

/** The literal exponent of a power as a number, `"2 / 9.5"`; for powers of dimensions. */
export function exponentNumber(exponent: string): number {
  const [above = "", below = "1"] = exponent.split(" / ");
  return Number(above) / Number(below);
}

/** What the check knows of a part of a formula: its powers, and whether it is a point on a scale or an angle. */
interface Kind {
  readonly powers: Powers;
  readonly point: boolean;
  readonly angle: boolean;
}

const bare: Kind = { powers: dimensions.ratio, point: false, angle: false };

function kindOf(name: DimensionName): Kind {
  return { powers: dimensions[name], point: name === "temperature", angle: name === "angle" };
}

function samePowers(a: Powers, b: Powers): boolean {
  return a.every((power, index) => Math.abs(power - (b[index] ?? 0)) < 1e-9);
}

/** How a kind is called in a message: the name that has its powers, else the powers themselves. */
function kindText(kind: Kind): string {
  if (kind.point) return "temperature";
  if (kind.angle) return "angle";
  const names = Object.entries(dimensions).filter(([name, powers]) => name !== "temperature" && samePowers(powers, kind.powers));
  if (names.length > 0) return names.map(([name]) => name).join(" or ");
  const bases = ["length", "mass", "time", "temperature", "money", "labour"];
  return kind.powers.flatMap((power, index) => (power === 0 ? [] : [`${bases[index] ?? ""}^${String(power)}`])).join(" ");
}

function scaled(powers: Powers, by: number): Powers {
  return powers.map((power) => power * by) as unknown as Powers;
}

function summed(a: Powers, b: Powers): Powers {
  return a.map((power, index) => power + (b[index] ?? 0)) as unknown as Powers;
}

/** A formula whose parts do not go together; the message names both. */
export class DimensionError extends Error {}

/**
 * Checks that a formula gives what it is declared to give.
 *
 * @param formula - the tree of the formula
 * @param declared - the dimension the step is declared to have
 * @param names - the dimension of every name that may stand in it
 * @throws DimensionError naming both dimensions, as in `"a * b" gives volume, but is declared area`
 */
export function checkDimension(formula: Formula, declared: DimensionName, names: ReadonlyMap<string, DimensionName>): void {
  const given = kindIn(formula, names);
  const wanted = kindOf(declared);
  const fits = samePowers(given.powers, wanted.powers) && given.point === wanted.point && (!wanted.angle || given.angle);
  if (!fits) throw new DimensionError(`"${formulaText(formula)}" gives ${kindText(given)}, but is declared ${declared}`);
}

function kindIn(formula: Formula, names: ReadonlyMap<string, DimensionName>): Kind {
  const at = (part: Formula): Kind => kindIn(part, names);
  const refuse = (why: string): never => {
    throw new DimensionError(`"${formulaText(formula)}": ${why}`);
  };
  switch (formula.kind) {
    case "number":
    case "pi":
      return bare;
    case "name": {
      const name = names.get(formula.name);
      return name === undefined ? refuse("this name has no dimension") : kindOf(name);
    }
    case "negate": {
      const of = at(formula.of);
      return of.point ? refuse("a temperature has no negative; take a temperature difference") : of;
    }
    case "sum": {
      const [left, right] = [at(formula.left), at(formula.right)];
      if (!samePowers(left.powers, right.powers)) return refuse(`${formula.operator === "+" ? "adds" : "subtracts"} ${kindText(left)} and ${kindText(right)}`);
      if (formula.operator === "+" && left.point && right.point) return refuse("adds two temperatures");
      if (formula.operator === "-" && right.point && !left.point) return refuse("takes a temperature from a temperature difference");
      const point = formula.operator === "+" ? left.point || right.point : left.point && !right.point;
      return { powers: left.powers, point, angle: left.angle || right.angle };
    }
    case "product": {
      const [left, right] = [at(formula.left), at(formula.right)];
      if (left.point || right.point) return refuse("multiplies or divides a temperature; take a temperature difference");
      const powers = summed(left.powers, formula.operator === "*" ? right.powers : scaled(right.powers, -1));
      const angle = formula.operator === "*" ? left.angle !== right.angle : left.angle && !right.angle;
      return { powers, point: false, angle: angle && samePowers(powers, bare.powers) };
    }
    case "power": {
      const base = at(formula.base);
      if (base.point) return refuse("raises a temperature to a power");
      return { powers: scaled(base.powers, exponentNumber(formula.exponent)), point: false, angle: false };
    }
    case "call": {
      const parts = formula.of.map(at);
      const [first = bare] = parts;
      switch (formula.function) {
        case "min":
        case "max":
          if (parts.some((part) => !samePowers(part.powers, first.powers) || part.point !== first.point))
            return refuse(`compares ${parts.map(kindText).join(" and ")}`);
          return first;
        case "sqrt":
          return first.point ? refuse("takes the root of a temperature") : { powers: scaled(first.powers, 0.5), point: false, angle: false };
        case "sin":
          return first.angle ? bare : refuse(`takes the sine of ${kindText(first)}; it wants an angle`);
        default:
          if (first.point || !samePowers(first.powers, bare.powers)) return refuse(`${formula.function} takes a bare number, not ${kindText(first)}`);
          return formula.function === "asin" ? kindOf("angle") : bare;
      }
    }
  }
}
