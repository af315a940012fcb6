// Takes an input that could be right and puts something wrong into it, at one place or several.
import type { Draw } from "../support/random.js";
import { hostileValue, oddQuantity } from "./hostile.js";

type Holder = Record<string | number, unknown>;
/** What holds a value, and under which key. */
type Place = readonly [holder: Holder, key: string | number];

/** Every place in plain data: what holds it, and under which key. */
function places(value: unknown, found: Place[] = []): readonly Place[] {
  if (typeof value !== "object" || value === null) return found;
  for (const key of Object.keys(value)) {
    const place = Array.isArray(value) ? Number(key) : key;
    found.push([value as Holder, place]);
    places((value as Holder)[place], found);
  }
  return found;
}

/** The same value with some of its places made wrong. The value must be plain data; it is not touched. */
export function mutated(value: unknown, draw: Draw): unknown {
  const copy = structuredClone(value);
  if (typeof copy !== "object" || copy === null) return hostileValue(draw);
  // The places are listed before anything is put in: what bites is not to be walked.
  const all: readonly [Place, ...Place[]] = [[copy as Holder, "more"], ...places(copy)];
  for (let times = draw.one([0, 1, 1, 1, 2, 3]); times > 0; times -= 1) change(...draw.one(all), draw);
  return copy;
}

function change(holder: Holder, key: string | number, draw: Draw): void {
  const old = holder[key];
  draw.one<() => unknown>([
    () => void (holder[key] = hostileValue(draw)),
    () => void (holder[key] = oddQuantity(draw)),
    () => void (holder[key] = typeof old === "string" ? old.replace(/\d+/, draw.one(["0", "-1", "1e9", "1e30", "1e-9", "999999"])) : hostileValue(draw)),
    () => void (holder[key] = typeof old === "string" ? old.replace(/[a-z]+\d?$/, draw.one(["in", "mm", "ft2", "lb", "mil", "gal", "h", "degC"])) : old),
    () => void Reflect.deleteProperty(holder, key),
    () => (Array.isArray(holder) ? holder.push(hostileValue(draw)) : Object.defineProperty(holder, draw.one(["__proto__", "constructor", "prototype", "toString", "then", "length", "more"]), { value: hostileValue(draw), enumerable: true, configurable: true, writable: true })),
    () => void (holder[key] = Array.isArray(old) ? [...(old as unknown[]), ...(old as unknown[])] : [old]),
  ])();
}
