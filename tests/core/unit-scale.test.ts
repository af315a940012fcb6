// Every factor of the table, against programs and tables from outside: GNU Units, NIST SP 811 as quoted, mathjs, and the
// definitions that convert-units ships (rounded, but not ours).
import configureMeasurements from "convert-units";
import area from "convert-units/definitions/area";
import force from "convert-units/definitions/force";
import length from "convert-units/definitions/length";
import mass from "convert-units/definitions/mass";
import pressure from "convert-units/definitions/pressure";
import speed from "convert-units/definitions/speed";
import temperature from "convert-units/definitions/temperature";
import time from "convert-units/definitions/time";
import volume from "convert-units/definitions/volume";
import { Decimal } from "decimal.js";
import { all, type BigNumber, create } from "mathjs";
import { describe, expect, it } from "vitest";
import { exact, isExact, toDecimal } from "../../src/core/amount.js";
import { dimensions, type DimensionName } from "../../src/core/dimensions.js";
import { compare } from "../../src/core/quantity-arithmetic.js";
import { isExactQuantity } from "../../src/core/quantity.js";
import { quantity } from "../../src/core/read-quantity.js";
import { fromBase, toBase, unitScale } from "../../src/core/unit-scale.js";
import { type UnitCode, unitDimension, unitsOf } from "../../src/core/units.js";
import { expectPrinted, vector } from "../support/vectors.js";

const names = Object.keys(dimensions) as DimensionName[];
const codes: readonly UnitCode[] = names.flatMap((dimension) => unitsOf(dimension));

/** Size of a product of our units in base units: `"ft2*mil/gal"`. */
function sizeOf(product: string): Decimal {
  const parts = [...`*${product}`.matchAll(/([*/])([^*/]+)/g)];
  return parts.reduce((size, [, operator, part = ""]) => {
    const value = /^\d/.test(part) ? new Decimal(part) : new Decimal(toDecimal(unitScale(part as UnitCode).size).toString());
    return operator === "*" ? size.times(value) : size.div(value);
  }, new Decimal(1));
}

function relativeError(ours: Decimal.Value, theirs: Decimal.Value): number {
  return new Decimal(ours).minus(theirs).div(theirs).abs().toNumber();
}

const numberIn = (text = ""): string => /^[-+.\de]+/.exec(text)?.[0] ?? "";

describe("GNU Units 2.22, to its 15 digits", () => {
  it.each([
    { row: vector("unit-mil-um"), from: "mil", to: "um" },
    { row: vector("unit-inch-mm"), from: "in", to: "mm" },
    { row: vector("unit-yard-m"), from: "yd", to: "m" },
    { row: vector("unit-mile-m"), from: "5280*ft", to: "m" },
    { row: vector("unit-in-2-mm-2"), from: "in2", to: "mm2" },
    { row: vector("unit-in-3-cm-3"), from: "in3", to: "cm3" },
    { row: vector("unit-ft-3-m-3"), from: "ft3", to: "m3" },
    { row: vector("unit-yd-3-ft-3"), from: "yd3", to: "ft3" },
    { row: vector("unit-gallon-l"), from: "gal", to: "L" },
    { row: vector("unit-gallon-in-3"), from: "gal", to: "in3" },
    { row: vector("unit-gallon-ft-3"), from: "gal", to: "ft3" },
    { row: vector("unit-ft-3-gallon"), from: "ft3", to: "gal" },
    { row: vector("unit-quart-ml"), from: "qt", to: "mL" },
    { row: vector("unit-pint-ml"), from: "pt", to: "mL" },
    { row: vector("unit-floz-ml"), from: "floz", to: "mL" },
    { row: vector("unit-pound-kg"), from: "lb", to: "kg" },
    // A grain is a seven-thousandth of a pound.
    { row: vector("unit-grain-mg"), from: "lb/7000", to: "g/1000" },
    { row: vector("unit-80-lb-kg"), from: "80*lb", to: "kg" },
    { row: vector("unit-lbf-n"), from: "lbf", to: "N" },
    { row: vector("unit-kip-kn"), from: "kip", to: "kN" },
    { row: vector("unit-psi-kpa"), from: "psi", to: "kPa" },
    { row: vector("unit-psi-mpa"), from: "psi", to: "MPa" },
    { row: vector("unit-mpa-psi"), from: "MPa", to: "psi" },
    { row: vector("unit-lbf-ft-2-pa"), from: "psf", to: "Pa" },
    { row: vector("unit-lbf-ft-2-kpa"), from: "psf", to: "kPa" },
    { row: vector("unit-ft-2-gallon-m-2-l"), from: "ft2/gal", to: "m2/L" },
    { row: vector("unit-m-2-l-ft-2-gallon"), from: "m2/L", to: "ft2/gal" },
    { row: vector("unit-gallon-100-ft-2-l-m-2"), from: "gal/100/ft2", to: "L/m2" },
    { row: vector("unit-l-m-2-mm"), from: "L/m2", to: "mm" },
    { row: vector("unit-ft-2-mil-gallon-m-2-um-l"), from: "ft2*mil/gal", to: "m2*um/L" },
    { row: vector("unit-lb-ft-3-kg-m-3"), from: "lb/ft3", to: "kg/m3" },
    { row: vector("unit-kg-m-3-lb-ft-3"), from: "kg/m3", to: "lb/ft3" },
    { row: vector("unit-lb-ft-2-kg-m-2"), from: "lb/ft2", to: "kg/m2" },
    { row: vector("unit-lb-ft-2-hr-kg-m-2-hr"), from: "lb/ft2/h", to: "kg/m2/h" },
    { row: vector("unit-kg-m-2-hr-lb-ft-2-hr"), from: "kg/m2/h", to: "lb/ft2/h" },
    { row: vector("unit-mph-km-hr"), from: "mph", to: "1000*m/h" },
    { row: vector("unit-mph-m-s"), from: "mph", to: "m/s" },
    { row: vector("unit-cfm-ft-2-l-s-m-2"), from: "ft3/min/ft2", to: "L/s/m2" },
    { row: vector("unit-5-degf-degc"), from: "5*degFDifference", to: "degCDifference" },
  ])("$row.id", ({ row, from, to }) => {
    expect(relativeError(sizeOf(from).div(sizeOf(to)), numberIn(row.expected.value))).toBeLessThan(1e-14);
  });

  it("perm", () => {
    const perm = quantity("permeance", "1 perm").to("ng/(s m2 Pa)").toString();
    // GNU Units takes mercury at 0 °C as 13 595.0889 kg/m³; the conventional 13 595.1 differs by 8.2e-7.
    expect(relativeError(perm, numberIn(vector("unit-perm-0c-ng-s-m-2-pa").expected.value))).toBeLessThan(1e-6);
  });

  it.each([
    { row: vector("unit-tempf-40-tempc"), to: "degC" },
    { row: vector("unit-tempf-50-tempc"), to: "degC" },
    { row: vector("unit-tempf-90-tempc"), to: "degC" },
    { row: vector("unit-tempf-100-tempc"), to: "degC" },
    { row: vector("unit-tempc-5-tempf"), to: "degF" },
    { row: vector("unit-tempc-35-tempf"), to: "degF" },
  ] as const)("$row.id", ({ row, to }) => {
    const [, scale = "", number = ""] = /^temp([CF])\((.*)\)$/.exec(row.inputs.from ?? "") ?? [];
    const given = quantity("temperature", { value: number, unit: scale === "F" ? "degF" : "degC" });
    expect(relativeError(given.to(to).toString(), numberIn(row.expected.value))).toBeLessThan(1e-14);
  });
});

describe("NIST SP 811, appendix B.8, as quoted in NISTunits, to the figures printed", () => {
  it.each([
    { row: vector("nist811-mil"), from: "mil", to: "mm" },
    { row: vector("nist811-inch"), from: "in", to: "m" },
    { row: vector("nist811-yard"), from: "yd", to: "m" },
    { row: vector("nist811-mile"), from: "5280*ft", to: "m" },
    { row: vector("nist811-mph-ms"), from: "mph", to: "m/s" },
    { row: vector("nist811-in2"), from: "in2", to: "m2" },
    { row: vector("nist811-in3"), from: "in3", to: "m3" },
    { row: vector("nist811-ft3"), from: "ft3", to: "m3" },
    { row: vector("nist811-yd3"), from: "yd3", to: "m3" },
    { row: vector("nist811-gallon"), from: "gal", to: "L" },
    { row: vector("nist811-quart"), from: "qt", to: "L" },
    { row: vector("nist811-lb"), from: "lb", to: "kg" },
    { row: vector("nist811-oz"), from: "oz", to: "g" },
    { row: vector("nist811-grain"), from: "lb/7000", to: "g/1000" },
    { row: vector("nist811-lbf"), from: "lbf", to: "N" },
    { row: vector("nist811-kip"), from: "kip", to: "kN" },
    { row: vector("nist811-ksi"), from: "ksi", to: "kPa" },
    { row: vector("nist811-psf"), from: "psf", to: "Pa" },
    { row: vector("nist811-inhg"), from: "inHg", to: "Pa" },
    { row: vector("nist811-pcf"), from: "lb/ft3", to: "kg/m3" },
    { row: vector("nist811-pcy"), from: "lb/yd3", to: "kg/m3" },
    { row: vector("nist811-lbft2"), from: "lb/ft2", to: "kg/m2" },
    { row: vector("nist811-cfm"), from: "ft3/min", to: "L/s" },
    { row: vector("nist811-perm0"), from: "perm", to: "kg/Pa/s/m2" },
  ])("$row.id", ({ row, from, to }) => {
    expectPrinted(sizeOf(from).div(sizeOf(to)), row.expected.value);
  });
});

describe("pairs that documents print", () => {
  // Mason Contractors Association of America; masonry standard of the US societies (TMS 602).
  it.each([
    { row: vector("weather-unit-20F"), dimension: "temperature" },
    { row: vector("weather-unit-25F"), dimension: "temperature" },
    { row: vector("weather-unit-32F"), dimension: "temperature" },
    { row: vector("weather-unit-40F"), dimension: "temperature" },
    { row: vector("weather-unit-50F"), dimension: "temperature" },
    { row: vector("weather-unit-70F"), dimension: "temperature" },
    { row: vector("weather-unit-140F"), dimension: "temperature" },
    { row: vector("wind-8mph"), dimension: "speed" },
    { row: vector("wind-15mph"), dimension: "speed" },
  ] as const)("$row.id", ({ row, dimension }) => {
    const [[from = "", value = ""] = [], [to = "", printed] = []] = [Object.entries(row.inputs)[0], Object.entries(row.expected)[0]];
    expectPrinted(quantity(dimension, { value, unit: from as "mph" & "degF" }).to(to as "mph" & "degF"), printed);
  });

  // US Department of Defense, MIL-HDBK-1001: fluid-applied film.
  it.each([vector("film-hdbk1001-30mil"), vector("film-hdbk1001-40mil"), vector("film-hdbk1001-45mil")])("$id", ({ inputs, expected }) => {
    expectPrinted(quantity("length", inputs.thickness as "1 mil").to("mm"), expected.thickness_si);
  });

  it("the perm of udunits at 0 °C", () => {
    expectPrinted(sizeOf("perm").div(sizeOf("kg/Pa/s/m2")), vector("perm-udunits-0c").expected.si);
  });

  it("the US gallon of udunits is ours, rounded to 7 figures", () => {
    expectPrinted(sizeOf("gal").div(sizeOf("m3")), vector("udunits-gallon").expected.value);
  });

  it("a federal guide rounds 250 ft2/gal down where half up gives 6.14", () => {
    const exactly = quantity("spreadingRate", "250 ft2/gal").to("m2/L");
    expect(exactly.toFixed(2)).toBe("6.14");
    expect(exactly.toFixed(2, Decimal.ROUND_DOWN)).toBe(numberIn(vector("sr-ufgs-613").expected.spreading_rate));
  });

  it("the same guide's other pair is 3 % off", () => {
    const exactly = quantity("spreadingRate", "105 ft2/gal").to("m2/L").toString();
    expect(relativeError(exactly, numberIn(vector("sr-ufgs-105").expected.spreading_rate))).toBeGreaterThan(0.03);
  });
});

/** Each unit as mathjs says it, where its own name there is another or its own constant is rounded (psi, kip). */
const inMathjs: Readonly<Partial<Record<UnitCode, string>>> = {
  ratio: "1", "%": "1/100", count: "1", rad: "1", deg: "pi/180", min: "minute", "ft/min": "ft/minute",
  gal: "gallon", qt: "quart", pt: "pint", floz: "fluidounce", mL: "1e-3 L",
  oz: "lbm/16", lb: "lbm", t: "tonne", d: "day",
  degF: "5/9 K", degC: "K", degFDifference: "5/9 K", degCDifference: "K", KDifference: "K",
  kip: "1000 lbf", psf: "lbf/ft^2", psi: "lbf/in^2", ksi: "1000 lbf/in^2", inHg: "13595.1 kg/m^3 * 9.80665 m/s^2 * in",
  mph: "5280 ft/hour", "lb/gal": "lbm/gallon", "ft2/gal": "ft^2/gallon",
  perm: "lbm/7000/(ft^2 hour) / (13595.1 kg/m^3 * 9.80665 m/s^2 * in)", "ng/s/m2/Pa": "1e-12 kg/(s m^2 Pa)",
  "/degF": "1/(5/9 K)", "/degC": "1/K", degFh: "5/9 K hour", degCh: "K hour", degCd: "K day",
};

/** `lb/ft2/h` as mathjs reads it: `lbm/ft^2/hour`. */
function mathjsText(code: UnitCode): string {
  const words = (text: string): string => text.replace(/\blb\b/g, "lbm").replace(/\bh\b/g, "hour").replace(/(?<=[a-z])([23])\b/g, "^$1").replace(/\bd\b/g, "day");
  return inMathjs[code] ?? `1 ${words(code.startsWith("/") ? `1${code}` : code)}`.replace(/^1 1\//, "1/");
}

describe("mathjs with 80 digits", () => {
  const math = create(all!, { number: "BigNumber", precision: 80 });
  const bases = ["m", "kg", "s", "K"];

  it.each(codes)("%s", (code) => {
    const base = dimensions[unitDimension(code)].flatMap((power, index) => (power === 0 ? [] : [`${bases[index] ?? ""}^(${String(power)})`])).join(" * ");
    const size: unknown = math.evaluate(`(${mathjsText(code)}) / (1 ${base})`);
    expect(relativeError(toDecimal(unitScale(code).size).toString(), (size as BigNumber).toString())).toBeLessThan(1e-35);
  });
});

describe("the definitions that convert-units ships, rounded by up to 6e-6", () => {
  const shipped = configureMeasurements<string, string, string>({ length, area, volume, mass, time, force, pressure, speed, temperature } as Parameters<typeof configureMeasurements>[0]);
  const theirName: Readonly<Partial<Record<UnitCode, string>>> = { um: "μm", mL: "ml", L: "l", mm3: "mm3", floz: "fl-oz", pt: "pnt", ton: "t", t: "mt", mph: "mph", degF: "F", degC: "C", d: "day" };
  const measures: readonly DimensionName[] = ["length", "area", "volume", "mass", "time", "force", "pressure", "speed"];
  const known = shipped().possibilities();
  const shared = codes.filter((code) => measures.includes(unitDimension(code)) && known.includes(theirName[code] ?? code));

  const sizeOfOne = (code: UnitCode): Decimal => new Decimal(toDecimal(unitScale(code).size).toString());

  it("share many units with us", () => {
    expect(shared.length).toBeGreaterThan(35);
  });

  it.each(shared)("%s", (code) => {
    const dimension = unitDimension(code);
    for (const other of shared.filter((one) => unitDimension(one) === dimension)) {
      const theirs = shipped(1).from(theirName[code] ?? code).to(theirName[other] ?? other);
      expect(relativeError(sizeOfOne(code).div(sizeOfOne(other)), theirs)).toBeLessThan(6e-6);
    }
  });

  it.each([-40, 0, 32, 40, 212])("%d degF", (given) => {
    const theirs = shipped(given).from("F").to("C");
    expect(Math.abs(quantity("temperature", { value: given, unit: "degF" }).toNumber("degC") - theirs)).toBeLessThan(1e-9);
  });
});

describe("the chain closes, exactly", () => {
  it.each([
    ["length", "12 in", "1 ft"],
    ["length", "3 ft", "1 yd"],
    ["length", "1000 mil", "1 in"],
    ["length", "25.4 mm", "1 in"],
    ["length", "25.4 um", "1 mil"],
    ["area", "144 in2", "1 ft2"],
    ["area", "9 ft2", "1 yd2"],
    ["volume", "1728 in3", "1 ft3"],
    ["volume", "27 ft3", "1 yd3"],
    ["volume", "231 in3", "1 gal"],
    ["volume", "4 qt", "1 gal"],
    ["volume", "8 pt", "1 gal"],
    ["volume", "128 fl oz", "1 gal"],
    ["volume", "3.785411784 L", "1 gal"],
    ["volume", "1000 L", "1 m3"],
    ["mass", "16 oz", "1 lb"],
    ["mass", "2000 lb", "1 ton"],
    ["time", "24 h", "1 d"],
    ["force", "4.4482216152605 N", "1 lbf"],
    ["pressure", "144 psf", "1 psi"],
    ["density", "1728/231 lb/ft3", "1 lb/gal"],
    ["temperatureDifference", "9 degF", "5 degC"],
    ["ratio", "100 %", "1"],
  ] as const)("%s: %s is %s", (dimension: DimensionName, a: string, b: string) => {
    const [one, other] = [quantity(dimension, a as never), quantity(dimension, b as never)];
    expect(isExactQuantity(one)).toBe(true);
    expect(compare(one, other)).toBe(0);
  });
});

describe("a temperature and a temperature difference", () => {
  // Fixed points of the two scales, from their definitions: F = 9/5 C + 32, K = C + 273.15.
  it.each([
    ["32 degF", "0", "273.15"],
    ["212 degF", "100", "373.15"],
    ["-40 degF", "-40", "233.15"],
    ["-459.67 degF", "-273.15", "0"],
    ["0 K", "-273.15", "0"],
  ] as const)("the point %s", (text, celsius, kelvin) => {
    const point = quantity("temperature", text);
    expect(point.to("degC").toString()).toBe(celsius);
    expect(point.to("K").toString()).toBe(kelvin);
  });

  it("a difference of 9 degF is one of 5 degC and 5 K", () => {
    const difference = quantity("temperatureDifference", "9 degF");
    expect(difference.to("degC").toString()).toBe("5");
    expect(difference.to("K").toString()).toBe("5");
    expect(difference.toString()).toBe("9 degF");
  });
});

describe("what convert-units would get wrong", () => {
  it("nought keeps its place on a scale (it takes 0 for nothing)", () => {
    expect(toDecimal(toBase(exact(0n), "degC")).toString()).toBe("273.15");
    expect(toDecimal(fromBase(exact(0n), "degC")).toString()).toBe("-273.15");
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, ""])("%j never becomes nought", (value) => {
    expect(() => quantity("length", { value, unit: "ft" })).toThrow();
  });

  it("what two dimensions spell alike keeps two factors", () => {
    expect(quantity("pressure", "1 psf").to("Pa").toFixed(6)).toBe("47.880259");
    expect(quantity("arealMass", "1 psf").to("kg/m2").toFixed(6)).toBe("4.882428");
  });

  it("every factor but that of the degree is an exact fraction", () => {
    expect(codes.filter((code) => !isExact(unitScale(code).size))).toEqual(["deg"]);
  });

  it("a unit there and back is the same amount", () => {
    const amount = exact(1n, 3n);
    for (const code of codes) expect([code, toDecimal(fromBase(toBase(amount, code), code)).minus(toDecimal(amount)).abs().lt("1e-38")]).toEqual([code, true]);
  });
});
