import { Decimal } from "../core/amount.js";
import { type Path, pathText } from "../core/problems.js";
import { isQuantity } from "../core/quantity.js";
import { same } from "./compare-lines.js";

/** One input of a job that is not as it was. */
export interface InputChange {
  /** Where it is, elevations, layers and columns by their names. */
  readonly at: string;
  readonly change: "added" | "removed" | "changed";
  readonly before?: string;
  readonly after?: string;
}

/** A change that can be made by itself. */
export interface FoundChange {
  readonly path: Path;
  readonly before: unknown;
  readonly after: unknown;
}

type Tree = Readonly<Record<string, unknown>>;

/** Every place at which two jobs that have been read differ; amounts are compared, not the units they are written in. */
export function findChanges(before: unknown, after: unknown, path: Path = []): readonly FoundChange[] {
  if (isLeaf(before) || isLeaf(after) || Array.isArray(before) !== Array.isArray(after)) return leafAlike(before, after) ? [] : [{ path, before, after }];
  const [was, is] = [entriesOf(before), entriesOf(after)];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((key) => findChanges(was.get(key), is.get(key), [...path, key]));
}

/** What is compared as a whole: what has no parts, a quantity, an amount of money. */
function isLeaf(value: unknown): boolean {
  return typeof value !== "object" || value === null || isQuantity(value) || Decimal.isDecimal(value);
}

function leafAlike(a: unknown, b: unknown): boolean {
  if (isQuantity(a) && isQuantity(b)) return same(a, b);
  if (Decimal.isDecimal(a) && Decimal.isDecimal(b)) return a.eq(b);
  return a === b;
}

/** The parts of an object or a list: those of a list by their names where each has its own, else by their places. */
function entriesOf(value: unknown): ReadonlyMap<string | number, unknown> {
  if (!Array.isArray(value)) return new Map(Object.entries(value as Tree).filter(([, part]) => part !== undefined));
  const names = value.map(nameOf);
  const named = names.every((name) => name !== undefined) && new Set(names).size === names.length;
  return new Map(value.map((part: unknown, index) => [named ? (names[index] as string) : index, part]));
}

function nameOf(part: unknown): string | undefined {
  const { name, kind } = part as { readonly name?: string; readonly kind?: string };
  return name ?? kind;
}

/** A job with one place of it as it is in another: set, put in at the end of its list, or taken out. */
export function withChange(tree: unknown, path: Path, value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const entries = new Map(entriesOf(tree));
  const changed = withChange(entries.get(key), rest, value);
  if (changed === undefined) entries.delete(key);
  else entries.set(key, changed);
  return Array.isArray(tree) ? [...entries.values()] : Object.fromEntries(entries);
}

/** A change as it is told. */
export function toldChange({ path, before, after }: FoundChange): InputChange {
  const at = pathText(path);
  if (before === undefined) return { at, change: "added", after: shownValue(after) };
  if (after === undefined) return { at, change: "removed", before: shownValue(before) };
  return { at, change: "changed", before: shownValue(before), after: shownValue(after) };
}

function shownValue(value: unknown): string {
  if (isQuantity(value) || Decimal.isDecimal(value)) return value.toString();
  if (typeof value !== "object" || value === null) return String(value);
  const parts = [...entriesOf(value)].map(([key, part]) => (Array.isArray(value) ? shownValue(part) : `${String(key)} ${shownValue(part)}`));
  const text = parts.join(", ");
  return text.length > 200 ? `${text.slice(0, 197)}…` : text;
}
