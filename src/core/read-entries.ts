import type { Fault, Field, Fields, Value } from "./fields.js";
import { isList, mostProblems, nearest, type Path, type Problem, problem, shown } from "./problems.js";
import { unitSystem } from "./units.js";

/** Everything that was read. */
export interface ReadEntries {
  /** The values in the order of the fields; nothing where an input was left out or is at fault. */
  readonly values: readonly (Value | undefined)[];
  /** The fields that were left out, of which the default was taken. */
  readonly assumed: readonly Field[];
  /** Which input of each pair was given. */
  readonly chosen: readonly string[];
  /** Whether some inputs are in units of the SI, and none in those of the United States. */
  readonly metric: boolean;
}

/** Reads the inputs of one call; everything that is wrong is added to the problems. */
export function readEntries({ all, names, pairs }: Fields, input: unknown, problems: Problem[]): ReadEntries {
  const add = (path: Path, fault: Fault, says?: string): void => void problems.push(problem({ ...fault, path, says }));
  const assumed: Field[] = [];
  let [si, us] = [false, false];
  if (typeof input !== "object" || input === null || isList(input)) {
    add([], { code: "wrongKind", given: shown(input), wanted: { kind: "object", of: names } });
    return { values: none, assumed, chosen: none, metric: false };
  }
  const given = (name: string): unknown => (Object.hasOwn(input, name) ? (input as Readonly<Record<string, unknown>>)[name] : undefined);
  const readField = (field: Field): Value | undefined => {
    const { name, says, fallback, optional, wanted } = field;
    const value = given(name);
    if (value === undefined) {
      if (fallback !== undefined) assumed.push(field);
      else if (!optional) add([name], { code: "missing", given: "", wanted }, says);
      return fallback;
    }
    const found = field.read(value);
    if (typeof found !== "object") return found;
    if ("code" in found) {
      add([name], found, says);
      return undefined;
    }
    const system = unitSystem(found.unit);
    if (system === "si") si = true;
    if (system === "us") us = true;
    return found;
  };
  Object.keys(input).forEach((key, index) => {
    if (index >= mostProblems || names.includes(key)) return;
    const near = nearest(key, names);
    add([key.slice(0, 80)], { code: "unknown", given: "", wanted: near === undefined ? { kind: "key", of: names } : { kind: "near", key: near } });
  });
  const values = all.map(readField);
  const chosen = pairs.length === 0 ? none : pairs.flatMap(({ word, names }) => {
    const here = names.filter((name) => given(name) !== undefined);
    if (here.length !== 1) add([word], { code: "either", given: here.join(" and "), wanted: { kind: "exactlyOne", of: names } });
    return here;
  });
  return { values, assumed, chosen, metric: si && !us };
}

const none: readonly never[] = Object.freeze([]);
