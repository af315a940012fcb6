import type { DimensionName } from "../core/dimensions.js";
import { InputError, type Path, problem, type Problem, shown } from "../core/problems.js";
import { Quantity } from "../core/quantity.js";
import { readQuantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import type { Words } from "../core/wording.js";
import { say } from "./refusals.js";

/** Looks at a value and notes what is wrong with it. */
export type Look = (value: unknown, path: Path, problems: Problem[]) => void;

function fault(path: Path, value: unknown, wanted: Words | ""): Problem {
  const missing = value === undefined;
  return problem({ code: missing ? "missing" : "wrongKind", path, given: missing ? "" : shown(value), wanted });
}

/** A quantity as answers hold it. One that came back from JSON is none. */
export const measured = (dimension: DimensionName): Look => (value, path, problems) => {
  if (!Quantity.is(value)) problems.push(fault(path, value, say("quantityWanted", { dimension })));
  else if (value.dimension !== dimension) problems.push(problem({ code: "wrongDimension", path, given: value.toString(), found: value.dimension, wanted: say("dimensionWanted", { dimension }) }));
};

/** A quantity that is written by hand: `"4 ft"`, or one of the answers. */
export const written = (dimension: DimensionName): Look => (value, path, problems) => {
  const read = value === undefined ? fault(path, value, "") : readQuantity(dimension, value, { path });
  if ("code" in read) problems.push(problem(read));
};

/** A value of a plain kind. */
export const plain = (kind: "string" | "number" | "boolean"): Look => (value, path, problems) => {
  if (typeof value !== kind) problems.push(fault(path, value, say("kindWanted", { kind })));
};

/** One of some texts. */
export const oneOf = (...texts: readonly string[]): Look => (value, path, problems) => {
  if (typeof value !== "string" || !texts.includes(value)) problems.push(problem({ code: value === undefined ? "missing" : "notAChoice", path, given: value === undefined ? "" : shown(value), wanted: { kind: "choice", of: texts } }));
};

/** A list with at least so many in it. */
export const listOf = (look: Look, least = 0): Look => (value, path, problems) => {
  if (!Array.isArray(value)) problems.push(fault(path, value, say("listWanted")));
  else if (value.length < least) problems.push(problem(refusal(path, say("inTheList", { count: value.length }), say("giveOrMore", { least }))));
  else for (const [index, one] of value.entries()) look(one, [...path, index], problems);
};

/** What may be left out. */
export const maybe = (look: Look): Look => (value, path, problems) => {
  if (value !== undefined) look(value, path, problems);
};

/** An object with these keys; others are not looked at. */
export const having = (keys: Readonly<Record<string, Look>>, wanted = say("objectWanted")): Look => (value, path, problems) => {
  if (typeof value !== "object" || value === null || Array.isArray(value)) problems.push(fault(path, value, wanted));
  else for (const [key, look] of Object.entries(keys)) look((value as Readonly<Record<string, unknown>>)[key], [...path, key], problems);
};

/** An upright rectangle on the wall, with other keys besides. */
export const boxOnWall = (keys: Readonly<Record<string, Look>> = {}): Look => having({ left: measured("length"), bottom: measured("length"), width: measured("length"), height: measured("length"), ...keys });

/** The answers of a function of the package, with what of them is drawn. */
export const answersOf = (name: string, keys: Readonly<Record<string, Look>>): Look => having(keys, say("giveAnswersOf", { of: name }));

/** Ends a drawing in one error where what it is given cannot be drawn. */
export function lookAt(id: string, value: unknown, look: Look): void {
  const problems: Problem[] = [];
  look(value, [], problems);
  if (problems.length > 0) throw new InputError(id, problems);
}

/** Ends a drawing with something that does not go together. */
export function refuse(id: string, path: Path, given: string | Words, wanted: Words): never {
  throw new InputError(id, [problem(refusal(path, given, wanted))]);
}
