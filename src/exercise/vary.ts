import { type Amount, exactArithmetic as arithmetic } from "../core/amount.js";
import type { GivenDefinition } from "../core/definition.js";
import type { DimensionName } from "../core/dimensions.js";
import { nearest, type Problem, problem } from "../core/problems.js";
import { amountOf, makeQuantity, type Quantity } from "../core/quantity.js";
import { readQuantity } from "../core/read-quantity.js";
import { brokenLimit, limitsOf } from "../core/limits.js";
import type { Words } from "../core/wording.js";
import { writeQuantity } from "../core/write-quantity.js";
import { say } from "./refusals.js";

/** How an input is drawn: a value, one of a list, or any from one value to another a step apart. */
export type Vary = string | number | readonly [string | number, ...(string | number)[]] | { readonly from: string | number; readonly to: string | number; readonly step: string | number };

/** More values than this are no choice that anyone means. */
const most = 10000;

/** The texts that an input may take as the teacher wishes, within its limits; what cannot be is a problem. */
export function wishedValues(name: string, row: GivenDefinition, vary: Vary, problems: Problem[]): readonly (string | number)[] {
  const path = ["vary", name];
  const read = (value: string | number, is: DimensionName = row.is): Quantity | undefined => {
    const found = readQuantity(is, value, { path });
    if (!("code" in found)) return found;
    problems.push(problem({ ...found, says: row.says }));
    return undefined;
  };
  const before = problems.length;
  const texts = typeof vary === "object" && "from" in vary ? range(vary, read, (wanted) => void problems.push(problem({ code: "refused", path, given: "", wanted }))) : [vary].flat();
  const limits = limitsOf(row, name);
  const within = texts.filter((text) => {
    const value = typeof text === "object" ? text : read(text);
    return value !== undefined && brokenLimit(limits, amountOf(value)) === undefined;
  });
  if (within.length === 0 && problems.length === before) {
    problems.push(problem({ code: "refused", path, says: row.says, given: "", wanted: say("nothingLeft", { limits: limitsAsked(row) }) }));
  }
  return within.map((text) => (typeof text === "object" ? writtenLike(text) : text));
}

/** The limits of an input as words. */
function limitsAsked(row: GivenDefinition): readonly Words[] {
  const limits = (["above", "atLeast", "below", "atMost"] as const).flatMap((limit) => (row[limit] === undefined ? [] : [say("limit", { limit, value: String(row[limit]) })]));
  return row.whole === true ? [...limits, say("whole")] : limits;
}

function writtenLike(value: Quantity): string {
  const tape = value.unit === "in" ? writeQuantity(value, { as: "tape", tapeParts: 64 }) : undefined;
  return tape?.exact === true ? tape.text : writeQuantity(value, { digits: 12 }).text;
}

/** The values from one to another, a step apart. */
function range({ from, to, step }: Exclude<Vary, string | number | readonly unknown[]>, read: (value: string | number, is?: DimensionName) => Quantity | undefined, refuse: (wanted: Words) => void): readonly Quantity[] {
  const [low, high] = [read(from), read(to)];
  const apart = low === undefined ? undefined : read(step, low.dimension === "temperature" ? "temperatureDifference" : low.dimension);
  if (low === undefined || high === undefined || apart === undefined) return [];
  const [start, end, by] = [low, high, apart].map(amountOf) as [Amount, Amount, Amount];
  const values: Quantity[] = [];
  if (arithmetic.compare(by, arithmetic.literal("0")) <= 0) refuse(say("stepAboveNought"));
  else for (let at = start; arithmetic.compare(at, end) <= 0 && values.length <= most; at = arithmetic.add(at, by)) values.push(makeQuantity(low.dimension, at, low.unit));
  if (values.length > most) refuse(say("tooManyValues", { most }));
  return values;
}

/** Problems with names that are no input of the calculation. */
export function unknownNames(vary: Readonly<Record<string, Vary>>, names: readonly string[]): readonly Problem[] {
  return Object.keys(vary).filter((name) => !names.includes(name)).map((name) => {
    const near = nearest(name, names);
    return problem({ code: "unknown", path: ["vary", name], given: "", wanted: near === undefined ? { kind: "key", of: names } : { kind: "near", key: near } });
  });
}
