// What an editor shows of an input and an answer, written into the declarations of dist: what it is, its units and limits. The
// definitions and schemas have it as data, and the compiler keeps no comment of a type that it works out, so it is put
// there after the build, from the same JSON Schemas that an app can ask for.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import ts from "typescript";

/** @typedef {{ readonly title?: string, readonly description?: string, readonly const?: unknown, readonly properties?: Readonly<Record<string, Schema>>, readonly items?: Schema, readonly prefixItems?: readonly Schema[], readonly additionalProperties?: Schema | boolean, readonly anyOf?: readonly Schema[], readonly oneOf?: readonly Schema[] }} Schema */
/** @typedef {{ readonly at: number, readonly text: string }} Insertion */

const dist = path.resolve(import.meta.dirname, "../../dist");

/** @param {string} file @returns {Promise<any>} */
const built = async (file) => await import(pathToFileURL(path.join(dist, file)).href);

/** A property with what its schema says of it, and the schemas below. @param {ts.TypeElement} property @param {Schema} schema @param {Writer} writer */
function tellProperty(property, schema, writer) {
  if (!ts.isPropertySignature(property)) return;
  writer.tell(property, [schema.title, schema.description]);
  if (property.type !== undefined) tellType(property.type, schema, writer);
}

/** @param {ts.TypeLiteralNode} type @param {Readonly<Record<string, Schema>>} properties @param {Writer} writer */
function tellProperties(type, properties, writer) {
  for (const property of type.members) {
    const schema = property.name === undefined ? undefined : properties[property.name.getText(writer.source)];
    if (schema !== undefined) tellProperty(property, schema, writer);
  }
}

/** The options of a schema, itself where there is but one. @param {Schema} schema @returns {readonly Schema[]} */
const optionsOf = (schema) => [...(schema.anyOf ?? []), ...(schema.oneOf ?? [])].flatMap(optionsOf).concat(schema.properties !== undefined ? [schema] : []);

/** The word by which a type tells which of several it is, as JSON. @param {ts.TypeLiteralNode} type @param {Writer} writer */
function wordOf(type, { source }) {
  const [word] = type.members.flatMap((one) => (ts.isPropertySignature(one) && one.type !== undefined && ts.isLiteralTypeNode(one.type) ? [`${one.name.getText(source)} ${one.type.getText(source)}`] : []));
  return word;
}

/** @param {Schema} schema */
const wordOfSchema = ({ properties = {} }) => Object.entries(properties).flatMap(([name, one]) => (one.const === undefined ? [] : [`${name} ${JSON.stringify(one.const)}`]))[0];

/** @param {ts.TypeNode} type @param {Schema} schema @param {Writer} writer @returns {void} */
function tellType(type, schema, writer) {
  if (ts.isParenthesizedTypeNode(type) || ts.isTypeOperatorNode(type)) tellType(type.type, schema, writer);
  else if (ts.isUnionTypeNode(type)) type.types.forEach((one) => { tellType(one, schema, writer); });
  else if (ts.isArrayTypeNode(type)) tellType(type.elementType, schema.items ?? {}, writer);
  else if (ts.isTupleTypeNode(type)) type.elements.forEach((one, index) => { tellType(one, schema.prefixItems?.[index] ?? schema.items ?? {}, writer); });
  else if (ts.isTypeReferenceNode(type)) type.typeArguments?.forEach((one) => { tellType(one, schema, writer); });
  else if (ts.isTypeLiteralNode(type)) {
    const options = optionsOf(schema);
    const word = wordOf(type, writer);
    const option = options.find((one) => wordOfSchema(one) === word) ?? options.find((one) => wordOfSchema(one) === undefined) ?? {};
    tellProperties(type, option.properties ?? {}, writer);
    const [index] = type.members.filter(ts.isIndexSignatureDeclaration);
    if (index !== undefined && typeof schema.additionalProperties === "object") tellType(index.type, schema.additionalProperties, writer);
  }
}

class Writer {
  /** @param {string} file */
  constructor(file) {
    this.file = file;
    this.text = readFileSync(file, "utf8");
    this.source = ts.createSourceFile(file, this.text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TS);
    /** @type {Map<number, string>} */
    this.insertions = new Map();
  }

  /** @param {ts.PropertySignature} property @param {readonly (string | undefined)[]} parts */
  tell(property, parts) {
    const text = parts.filter((part) => part !== undefined).join("; ").replaceAll("*/", "* /");
    if (text === "" || ts.getJSDocCommentsAndTags(property).length > 0) return;
    const at = property.getStart(this.source);
    const line = this.text.lastIndexOf("\n", at) + 1;
    this.insertions.set(at, `/** ${text} */\n${this.text.slice(line, at)}`);
  }

  write() {
    if (this.insertions.size === 0) return;
    const parts = [];
    let end = this.text.length;
    for (const [at, text] of [...this.insertions].sort(([a], [b]) => b - a)) {
      parts.unshift(text, this.text.slice(at, end));
      end = at;
    }
    writeFileSync(this.file, this.text.slice(0, end) + parts.join(""));
  }
}

/** @param {ts.TypeNode | undefined} type @param {string} name @returns {ts.TypeNode | undefined} the type of a property of a type literal */
function within(type, name) {
  if (type === undefined || !ts.isTypeLiteralNode(type)) return undefined;
  const found = type.members.find((one) => ts.isPropertySignature(one) && one.name.getText() === name);
  return found !== undefined && ts.isPropertySignature(found) ? found.type : undefined;
}

/** @type {Map<string, { readonly input: Schema, readonly answers?: Schema }>} by name, what goes in and what comes out */
const schemas = new Map();
const [{ catalogue }, { jsonSchemaOf }, { answersSchemaOf }] = await Promise.all(["catalogue.js", "schema/index.js", "answers/index.js"].map(built));
for (const one of catalogue) {
  const name = one.id.replace(/^.*\./, "").replaceAll(/-(\w)/g, (/** @type {string} */ _, /** @type {string} */ letter) => letter.toUpperCase());
  schemas.set(name, { input: jsonSchemaOf(one), ..."definition" in one ? { answers: answersSchemaOf(one) } : {} });
}

for (const file of readdirSync(dist, { recursive: true, encoding: "utf8" }).filter((one) => /\.d\.c?ts$/.test(one))) {
  const writer = new Writer(path.join(dist, file));
  for (const statement of writer.source.statements) {
    if (!ts.isVariableStatement(statement)) continue;
    for (const { name, type } of statement.declarationList.declarations) {
      const told = schemas.get(name.getText(writer.source));
      if (told === undefined || type === undefined || !ts.isTypeReferenceNode(type)) continue;
      const [first] = type.typeArguments ?? [];
      if (first === undefined) continue;
      const made = type.typeName.getText(writer.source);
      const input = made === "Calculation" ? within(first, "given") : first;
      if (input !== undefined) tellType(input, told.input, writer);
      const steps = within(first, "steps");
      if (steps !== undefined && told.answers !== undefined) tellType(steps, told.answers, writer);
    }
  }
  writer.write();
}
