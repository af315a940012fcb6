// What an editor shows: every input of every function, however deep, and every answer of a calculation, has its text in the
// declarations that the package ships, as the compiler finds it from an app. `node tests/hover.mjs` fails where one has none.
import path from "node:path";
import ts from "typescript";
import { subPaths } from "./support/exports.mjs";

const root = path.resolve(import.meta.dirname, "..");

/** The functions by name, with the sub-path that has them. @type {{ name: string, from: string, steps: boolean }[]} */
const functions = [];
for (const subPath of Object.keys(subPaths()).filter((one) => one !== "." && one !== "./catalogue")) {
  const from = path.posix.join("settingbed", subPath);
  for (const [name, value] of Object.entries(await import(from))) if (typeof value === "function" && typeof value.id === "string") functions.push({ name, from, steps: "definition" in value });
}

const lines = functions.flatMap(({ name, from, steps }, index) => [
  `import { ${name} as f${index} } from "${from}";`,
  `export type Input${index} = Parameters<typeof f${index}>[0];`,
  ...(steps ? [`export type Answers${index} = ReturnType<typeof f${index}>;`] : []),
]);
/** @type {ts.CompilerOptions} */
const options = { strict: true, noEmit: true, skipLibCheck: true, target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext, types: [] };

/** Compiles the lines as a file of an app. @param {string} file - its name, which tells whether it imports or requires */
function compiled(file) {
  const host = ts.createCompilerHost(options);
  const text = lines.join("\n");
  /** @type {ts.CompilerHost} */
  const withFile = {
    ...host,
    getSourceFile: (name, how, ...rest) => (name === file ? ts.createSourceFile(name, text, how) : host.getSourceFile(name, how, ...rest)),
    fileExists: (name) => name === file || host.fileExists(name),
    readFile: (name) => (name === file ? text : host.readFile(name)),
  };
  const program = ts.createProgram([file], options, withFile);
  const source = program.getSourceFile(file);
  const [fault] = ts.getPreEmitDiagnostics(program, source);
  if (source === undefined || fault !== undefined) throw new Error(fault === undefined ? "nothing was compiled" : ts.flattenDiagnosticMessageText(fault.messageText, "\n"));
  return { source, checker: program.getTypeChecker() };
}

let shown = 0;
/** @type {string[]} */
const without = [];

/** Looks at the properties of our own types; a quantity, a text or a list of them has none of an input's. @param {ts.TypeChecker} checker @param {ts.Type} type @param {string} at @param {number} depth */
function look(checker, type, at, depth = 0) {
  if (type.isUnion()) {
    for (const one of type.types) look(checker, one, at, depth);
    return;
  }
  if (depth > 12 || !(type.flags & ts.TypeFlags.Object || type.isIntersection())) return;
  if (checker.isArrayType(type) || checker.isTupleType(type)) {
    for (const one of checker.getTypeArguments(/** @type {ts.TypeReference} */ (type))) look(checker, one, `${at}[]`, depth + 1);
    return;
  }
  const properties = checker.getPropertiesOfType(type);
  const names = properties.map(({ name }) => name);
  // A quantity, or a value with its unit, is one input.
  if (names.includes("toNumber") || names.join() === "value,unit") return;
  const index = checker.getIndexTypeOfType(type, ts.IndexKind.String);
  if (index !== undefined) look(checker, index, `${at}{}`, depth + 1);
  for (const property of properties) {
    const inner = checker.getTypeOfSymbol(property);
    const here = `${at}.${property.name}`;
    // The word by which one of several kinds is told speaks for itself, and so does the other of a pair, which must be left out.
    if (inner.isLiteral() || inner.flags & ts.TypeFlags.Undefined) continue;
    shown += 1;
    if (property.getDocumentationComment(checker).length === 0) without.push(here);
    look(checker, inner, here, depth + 1);
  }
}

for (const kind of ["mts", "cts"]) {
  const { source, checker } = compiled(path.join(root, "tests", `app.${kind}`));
  for (const statement of source.statements) {
    if (!ts.isTypeAliasDeclaration(statement)) continue;
    const { name } = functions[Number(/\d+/.exec(statement.name.text)?.[0])] ?? {};
    look(checker, checker.getTypeAtLocation(statement.name), `${kind}: ${name}${statement.name.text.startsWith("Answers") ? ", answers" : ""}`);
  }
}
console.log(`${shown} texts of inputs and answers of ${functions.length} functions, imported and required; ${without.length} are missing`);
for (const one of without.slice(0, 40)) console.log(`  ${one}`);
if (without.length > 0 || shown < 4000) process.exitCode = 1;
