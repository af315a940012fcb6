// The schemas of what composed functions answer, written from their types: a formula's answers are in its definition, theirs
// are as the code has them, so the compiler is asked. Run it (`npm run exports`) to write src/answers/composed.json;
// tests/answers/composed.test.ts fails where that differs.
import { writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

const root = path.resolve(import.meta.dirname, "../..");
export const composedFile = path.join(root, "src/answers/composed.json");

/** @typedef {Record<string, unknown>} Schema */

/** What JSON has of a type: `Quantity` and `Decimal` write themselves. */
class TypeReader {
  /** The types with a name, each once. @type {Record<string, Schema>} */
  named = {};
  /** Which type has the name. @type {Map<string, ts.Symbol>} */
  symbols = new Map();

  /** @param {ts.TypeChecker} checker */
  constructor(checker) {
    this.checker = checker;
  }

  /** @param {ts.Type} type @param {string} at @returns {Schema} */
  schemaOf(type, at) {
    const { flags } = type;
    if (flags & ts.TypeFlags.Unknown) return {};
    if (flags & ts.TypeFlags.StringLike) return type.isStringLiteral() ? { const: type.value } : { type: "string" };
    if (flags & ts.TypeFlags.NumberLike) return type.isNumberLiteral() ? { const: type.value } : { type: "number" };
    if (flags & ts.TypeFlags.BooleanLike) return flags & ts.TypeFlags.BooleanLiteral ? { const: this.checker.typeToString(type) === "true" } : { type: "boolean" };
    if (type.getSymbol()?.name === "Decimal") return { type: "string" };
    if (type.getSymbol()?.name === "Quantity") return this.quantityOf(type);
    const symbol = this.symbolOf(type);
    if (symbol === undefined) return this.spelt(type, at);
    const { name } = symbol;
    const known = this.symbols.get(name);
    if (known !== undefined && known !== symbol) throw new Error(`${at}: two types are called ${name}`);
    if (known === undefined) {
      // Before it is spelt: a type may hold itself.
      this.symbols.set(name, symbol);
      this.named[name] = this.spelt(type, name);
    }
    return { $ref: `#/$defs/${name}` };
  }

  /** A quantity of one dimension, or of any. @param {ts.Type} type @returns {Schema} */
  quantityOf(type) {
    const [dimension] = this.checker.getTypeArguments(/** @type {ts.TypeReference} */ (type));
    if (dimension === undefined) throw new Error("a quantity without its dimension");
    return { $ref: `#/$defs/${dimension.isStringLiteral() ? dimension.value : "quantity"}` };
  }

  /** What names an interface or a union; one that stands for different things by its arguments is spelt out. @param {ts.Type} type */
  symbolOf(type) {
    const args = type.isUnion() ? type.aliasTypeArguments : this.checker.getTypeArguments(/** @type {ts.TypeReference} */ (type));
    if ((args ?? []).some(({ flags }) => !(flags & ts.TypeFlags.Unknown)) || this.checker.isArrayLikeType(type)) return undefined;
    if (type.isUnion()) return type.types.every((one) => one.isLiteral() || one.flags & ts.TypeFlags.BooleanLiteral) ? undefined : type.aliasSymbol;
    const symbol = type.getSymbol();
    return type.isClassOrInterface() || (symbol?.flags ?? 0) & ts.SymbolFlags.Interface ? symbol : undefined;
  }

  /** @param {ts.Type} type @param {string} at @returns {Schema} */
  spelt(type, at) {
    const { checker } = this;
    if (type.isUnion()) return this.unionOf(type.types.filter(({ flags }) => !(flags & ts.TypeFlags.Undefined)).map((one) => this.schemaOf(one, at)));
    if (checker.isTupleType(type)) {
      const parts = checker.getTypeArguments(/** @type {ts.TypeReference} */ (type)).map((one) => this.schemaOf(one, `${at}[]`));
      return { type: "array", prefixItems: parts, minItems: parts.length, maxItems: parts.length };
    }
    if (checker.isArrayType(type)) {
      const [item] = checker.getTypeArguments(/** @type {ts.TypeReference} */ (type));
      return { type: "array", items: this.schemaOf(/** @type {ts.Type} */ (item), `${at}[]`) };
    }
    if (!(type.flags & ts.TypeFlags.Object || type.isIntersection()) || type.getCallSignatures().length > 0) throw new Error(`${at}: JSON does not write ${checker.typeToString(type)}`);
    return this.objectOf(type, at);
  }

  /** One of several; words to choose from in one list. @param {readonly Schema[]} options @returns {Schema} */
  unionOf(options) {
    const words = options.flatMap((one) => ("const" in one ? [one.const] : []));
    const others = options.filter((one) => !("const" in one));
    const one = words.length === 0 ? [] : [words.length === 2 && words.includes(true) && words.includes(false) ? { type: "boolean" } : { enum: words }];
    const all = [...one, ...others];
    return all.length === 1 ? /** @type {Schema} */ (all[0]) : { anyOf: all };
  }

  /** @param {ts.Type} type @param {string} at @returns {Schema} */
  objectOf(type, at) {
    const { checker } = this;
    /** @type {[string, Schema][]} */
    const properties = [];
    const required = [];
    for (const property of checker.getPropertiesOfType(type)) {
      const { name } = property;
      const of = checker.getTypeOfSymbol(property);
      if (of.flags & ts.TypeFlags.Undefined) continue;
      const told = ts.displayPartsToString(property.getDocumentationComment(checker)).replaceAll(/\{@link ([^}]+)\}/g, "$1").replaceAll(/\s+/g, " ").trim().replace(/\.$/, "");
      // Without a word of its own, its name is its title.
      properties.push([name, { ...(told === "" ? {} : { title: told }), ...this.schemaOf(of, `${at}.${name}`) }]);
      // What is undefined is not written.
      const written = !of.isUnion() || !of.types.some(({ flags }) => flags & ts.TypeFlags.Undefined);
      if (written && !(property.flags & ts.SymbolFlags.Optional)) required.push(name);
    }
    const [index] = checker.getIndexInfosOfType(type);
    return {
      type: "object",
      ...(properties.length === 0 ? {} : { properties: Object.fromEntries(properties), required }),
      additionalProperties: index === undefined ? false : this.schemaOf(index.type, `${at}{}`),
    };
  }
}

/** What composed functions answer, by id, and the types that they name. @returns {{ answers: Record<string, Schema>, named: Record<string, Schema> }} */
export function composedAnswers() {
  const file = path.join(root, "src/catalogue.ts");
  const { config } = ts.readConfigFile(path.join(root, "tsconfig.json"), (name) => ts.sys.readFile(name));
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const program = ts.createProgram([file], options);
  const checker = program.getTypeChecker();
  const reader = new TypeReader(checker);
  /** @type {[string, Schema][]} */
  const answers = [];
  for (const statement of program.getSourceFile(file)?.statements ?? []) {
    if (!ts.isImportDeclaration(statement) || statement.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword || !ts.isStringLiteral(statement.moduleSpecifier)) continue;
    const topic = statement.moduleSpecifier.text.split("/")[1] ?? "";
    const bindings = statement.importClause?.namedBindings;
    for (const { name } of bindings !== undefined && ts.isNamedImports(bindings) ? bindings.elements : []) {
      const type = checker.getTypeAtLocation(name);
      const [call] = type.getCallSignatures();
      if (call === undefined || type.getProperty("definition") !== undefined) continue;
      const id = `${topic}.${name.text.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
      answers.push([id, reader.schemaOf(call.getReturnType(), name.text)]);
    }
  }
  return { answers: Object.fromEntries(answers), named: Object.fromEntries(Object.entries(reader.named).sort(([a], [b]) => a.localeCompare(b, "en"))) };
}

/** As the file has it: a line for each function and each type. */
export function composedText() {
  const { answers, named } = composedAnswers();
  /** @param {Record<string, Schema>} of */
  const lines = (of) => Object.entries(of).map(([name, schema]) => `    ${JSON.stringify(name)}: ${JSON.stringify(schema)}`).join(",\n");
  return `{\n  "answers": {\n${lines(answers)}\n  },\n  "named": {\n${lines(named)}\n  }\n}\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const text = composedText();
  writeFileSync(composedFile, text);
  console.log(`${String(Object.keys(JSON.parse(text).answers).length)} composed functions told what they answer, ${String(text.length)} letters`);
}
