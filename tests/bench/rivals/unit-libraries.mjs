// General-purpose libraries of units, each with what the jobs ask of one.
 

/** @typedef {import("./jobs-with-units.mjs").Units} Units */

/** How mathjs writes our units. @type {Record<string, string>} */
const inMathjs = { ft2: "sqft", in2: "sqin", ft3: "cuft", gal: "gallon", qt: "quart", lb: "lbm", "lb/ft2": "lbm/sqft" };

/** @param {"number" | "BigNumber"} kind @returns {Promise<Units>} */
export async function mathjsUnits(kind) {
  const { all, create } = await import("mathjs");
  const math = /** @type {any} */ (create(/** @type {any} */ (all), { number: kind }));
  const number = kind === "number" ? (/** @type {number} */ value) => value : (/** @type {number} */ value) => math.bignumber(value);
  return {
    of: (value, unit) => math.unit(number(value), inMathjs[unit] ?? unit),
    number,
    add: math.add,
    sub: math.subtract,
    mul: math.multiply,
    per: math.divide,
    ceil: math.ceil,
    read: (result, unit) => (unit === "count" ? Number(result) : result.toNumber(inMathjs[unit] ?? unit)),
  };
}

/** @returns {Promise<Units>} */
export async function jsQuantities() {
  const name = "js-quantities";
  const { default: Qty } = await import(name);
  // Bare numbers stay plain numbers, which is the fastest that the library allows.
  const isBare = (/** @type {unknown} */ value) => typeof value === "number";
  return {
    of: (value, unit) => Qty(value, unit === "lb/ft2" ? "lbs/ft2" : unit === "lb" ? "lbs" : unit),
    number: (value) => value,
    add: (a, b) => (isBare(a) ? a + Number(b) : a.add(b)),
    sub: (a, b) => (isBare(a) ? a - b : a.sub(b)),
    mul: (a, b) => (isBare(a) ? a * b : a.mul(b)),
    per: (a, b) => (isBare(a) ? a / b : a.div(b).toBase().scalar),
    ceil: Math.ceil,
    read: (result, unit) => (unit === "count" ? result : result.to(unit === "lb" ? "lbs" : unit).scalar),
  };
}
