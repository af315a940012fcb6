// What strangers send: texts near to quantities and far from them, numbers at the ends of their range, objects that bite.
import { dimensions, type DimensionName, unitsOf, unitSymbol } from "../../src/core/index.js";
import type { Draw } from "../support/random.js";

const dimensionNames = Object.keys(dimensions) as [DimensionName, ...DimensionName[]];
const pieces = ["0", "1", "-1", "3/8", "1-5/8", "1 5/8", "5 ft 6-3/8 in", "5' 6\"", "1e30", "1e31", "1e-30", "1e400", "00", "1/0", "0/0", "1,5", "1,250", ".", ".5", "5.", "+", "-", "−", "--", "/", "'", "\"", "′", "″", " ", "  ", "\t", "\n", "\u00a0", "e", "E5", "%", " %", "NaN", "Infinity", "-Infinity", "0x10", "1_000", "½", "٣", "९", "𝟝", "°", "º", "²", "³", "µ", "μ", "\u0000", "\ud800", "\u202e", "ﬀ", "İ", "ß", "__proto__", "constructor", "toString", "ft", "in", "ft2", "sq ft", "lb/ft3", "degF", "count", "ratio"] as const;

/** A text made of pieces that mean something here, up to some hundred letters; now and then very long. */
export function hostileText(draw: Draw): string {
  const many = draw.whole(1, 50) === 1 ? draw.whole(20, 2000) : draw.whole(0, 5);
  const parts = Array.from({ length: many }, () => (draw.whole(1, 6) === 1 ? String.fromCodePoint(draw.whole(0, 0xd7ff)) : draw.one(pieces)));
  const text = parts.join(draw.one(["", "", " "]));
  return draw.whole(1, 200) === 1 ? text.padEnd(100_000, draw.one(["0", " ", "'", "1/", "-"])) : text;
}

const numbers = [0, -0, 1, -1, 0.1, 1e-7, 1e21, 1e30, 1e31, 1e308, 5e-324, NaN, Infinity, -Infinity, 2 ** 53, 2 ** 53 + 2, 1 / 3, 99.999999999, 100, 101] as const;

/** A number at some end, or of no size in particular. */
export function hostileNumber(draw: Draw): number {
  return draw.whole(1, 3) > 1 ? draw.one(numbers) : (draw.whole(-1_000_000, 1_000_000) / 1000) * 10 ** draw.whole(-20, 20);
}

/** A number with a unit, as it should be but for its size: far too small, far too large, below nought. */
export function oddQuantity(draw: Draw, dimension: DimensionName = draw.one(dimensionNames)): string {
  const units = unitsOf(dimension).map(unitSymbol) as [string, ...string[]];
  return `${draw.one(["0", "-1", "0.001", "1e-12", "1e-30", "1/3", "7-13/16", "1", "12.5", "640", "99999", "1e7", "1e12", "1e30", "123456789.123456789"])} ${draw.one(units)}`;
}

/** Objects that throw, lie or loop. */
function bitingObject(draw: Draw): unknown {
  const loop: Record<string, unknown> = {};
  loop.self = loop;
  let deep: unknown = "1 ft";
  for (let level = draw.whole(1, 3000); level > 0; level -= 1) deep = draw.whole(0, 1) === 0 ? [deep] : { value: deep };
  const throws = (): never => {
    throw new Error("a stranger's own");
  };
  return draw.one<() => unknown>([
    () => loop,
    () => deep,
    () => JSON.parse('{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}') as unknown,
    () => Object.create(null) as unknown,
    () => Object.defineProperty({ unit: "ft" }, "value", { enumerable: true, get: throws }),
    () => new Proxy({}, { get: throws, ownKeys: throws, has: throws, getPrototypeOf: throws }),
    () => ({ value: "1", unit: "ft", toString: throws, valueOf: throws, toJSON: throws }),
    () => ({ dimension: "length", toJSON: () => ({ value: 1e400, unit: "ft" }) }),
    () => ({ dimension: "length", toJSON: throws }),
    () => ({ value: { toString: () => "1" }, unit: "ft" }),
    () => ({ value: hostileNumber(draw), unit: draw.one(["ft", "ft2", "", "__proto__", "lb"]) }),
    () => ({ value: hostileText(draw), unit: hostileText(draw) }),
    () => new Map([["value", 1]]),
    () => new Date(NaN),
    () => Object("12 ft") as unknown,
    () => new Float64Array(4),
    () => Array.from({ length: draw.whole(0, 200) }, () => hostileText(draw)),
    () => Array.from({ length: 20_000 }, () => draw.one<unknown>([1, "1 ft", {}])),
  ])();
}

/** Anything. */
export function hostileValue(draw: Draw): unknown {
  return draw.one<() => unknown>([
    () => hostileText(draw),
    () => hostileText(draw),
    () => oddQuantity(draw),
    () => oddQuantity(draw),
    () => hostileNumber(draw),
    () => bitingObject(draw),
    () => draw.one<unknown>([null, undefined, true, false, 10n ** 40n, Symbol("odd"), () => "1 ft", [], {}, [[]], "", /x/]),
  ])();
}
