import type { JsonSchema } from "../../../src/schema/index.js";

/** A place in input or answers, with what stands there. */
export interface SchemaRow {
  readonly path: string;
  /** What it is, in words. */
  readonly titles: readonly string[];
  /** What kind of thing that is: its units and limits, the words to choose from. */
  readonly kinds: readonly string[];
  readonly isNeeded: boolean;
}

/** The keywords that our schemas have. */
interface Known {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, JsonSchema>>;
  readonly title?: string;
  readonly description?: string;
  readonly type?: string;
  readonly const?: string | number | boolean;
  readonly enum?: readonly (string | number | boolean)[];
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly required?: readonly string[];
  readonly items?: JsonSchema;
  readonly prefixItems?: readonly JsonSchema[];
  readonly additionalProperties?: JsonSchema | false;
  readonly oneOf?: readonly JsonSchema[];
  readonly anyOf?: readonly JsonSchema[];
}

/** Where a row is, and which named types it stands in: a type that holds itself is told once. */
interface Place {
  readonly path: string;
  readonly isNeeded: boolean;
  readonly within: readonly string[];
}

/** Every place of a schema, from the top down; the top itself is none. */
export function schemaRows(schema: JsonSchema): readonly SchemaRow[] {
  const { $defs = {} }: Known = schema;
  return rowsOf(schema, { path: "", isNeeded: true, within: [] }, $defs);
}

const alternatives = ({ oneOf, anyOf }: Known): readonly Known[] => (oneOf ?? anyOf ?? []);

/** Whether it is a quantity: it is written alike everywhere. */
const isQuantity = (schema: Known): boolean => Object.keys(schema.properties ?? {}).join() === "value,unit" || alternatives(schema).some((one) => one.properties !== undefined && isQuantity(one));

function rowsOf(schema: Known, place: Place, named: Readonly<Record<string, JsonSchema>>): readonly SchemaRow[] {
  const { path, isNeeded, within } = place;
  const { $ref, title, description, properties, items, prefixItems, additionalProperties, enum: words, const: word } = schema;
  const own = (kind = ""): readonly SchemaRow[] =>
    path === "" ? [] : [{ path, titles: title === undefined ? [] : [title], kinds: [description ?? "", kind].filter((text) => text !== ""), isNeeded }];
  const below = (of: JsonSchema, at: string, needed: boolean): readonly SchemaRow[] => rowsOf(of, { path: `${path}${at}`, isNeeded: needed, within }, named);
  if ($ref !== undefined) {
    const name = $ref.slice("#/$defs/".length);
    if (within.includes(name)) return own("as above");
    if (name === "Solution") return own("a solution, with its steps");
    return rowsOf({ ...(named[name] as Known | undefined), ...(title === undefined ? {} : { title }) }, { ...place, within: [...within, name] }, named);
  }
  if (isQuantity(schema)) return own();
  if (words !== undefined) return own(words.map(String).join(", "));
  if (word !== undefined) return own(String(word));
  if (properties !== undefined) {
    const { required = [] } = schema;
    return [...own("an object"), ...Object.entries(properties).flatMap(([name, inner]) => below(inner, path === "" ? name : `.${name}`, required.includes(name)))];
  }
  if (prefixItems !== undefined) return [...own("a list"), ...prefixItems.flatMap((inner, index) => below(inner, `[${String(index)}]`, true))];
  if (items !== undefined) return [...own("a list"), ...below(items, "[]", true)];
  if (typeof additionalProperties === "object") return [...own("an object by name"), ...below(additionalProperties, ".*", false)];
  const others = alternatives(schema);
  if (others.length === 0) return own(kindOf(schema));
  const inside = others.map((other) => rowsOf(other, place, named).filter((row) => row.path !== path || other.properties === undefined));
  return [...own("one of these"), ...merged(inside)];
}

/** A text or a yes or no, in words. */
function kindOf({ type }: Known): string {
  return type === "boolean" ? "true or false" : type === "string" ? "a text" : type === undefined ? "" : `a ${type}`;
}

/** The rows of all alternatives, each place once; what must stand in every one of them is needed. */
function merged(inside: readonly (readonly SchemaRow[])[]): readonly SchemaRow[] {
  const places = new Map<string, readonly SchemaRow[]>();
  for (const row of inside.flat()) places.set(row.path, [...(places.get(row.path) ?? []), row]);
  return [...places].map(([path, rows]) => ({
    path,
    titles: [...new Set(rows.flatMap(({ titles }) => titles))],
    kinds: [...new Set(rows.flatMap(({ kinds }) => kinds))],
    isNeeded: rows.length === inside.length && rows.every(({ isNeeded }) => isNeeded),
  }));
}
