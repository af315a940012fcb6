// Reads the declarations of the entries with the TypeScript compiler, and writes each public name with its type.
import path from "node:path";
import ts from "typescript";
import { callableLines } from "./callable-report.mjs";
import { brokenUp } from "./break-lines.mjs";
import { parametersOf, typePrinter, written } from "./print-type.mjs";

/**
 * The report of every entry, under the name of its file.
 *
 * @param {Record<string, string>} entries each sub-path with its file under dist, without the ending
 * @param {string} dist
 * @returns {Map<string, string>}
 */
export function entryReports(entries, dist) {
  const files = Object.values(entries).map((file) => path.join(dist, `${file}.d.ts`));
  const program = ts.createProgram(files, { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext, strict: true, skipLibCheck: true, noEmit: true, types: [] });
  const checker = program.getTypeChecker();
  const modules = Object.entries(entries).map(([name, file]) => {
    const source = program.getSourceFile(path.join(dist, `${file}.d.ts`));
    const symbol = source === undefined ? undefined : checker.getSymbolAtLocation(source);
    if (symbol === undefined) throw new Error(`${name} has no declarations`);
    return { name, shown: checker.getExportsOfModule(symbol).map((one) => ({ name: one.name, symbol: resolved(checker, one) })) };
  });
  // A type that some entry shows is written by its name; one that none shows is written out.
  const named = new Map(modules.flatMap(({ shown }) => shown.map(({ name, symbol }) => [symbol, name])));
  const print = typePrinter(checker, named);
  return new Map(modules.map(({ name, shown }) => {
    const sorted = [...shown].sort((a, b) => (a.name < b.name ? -1 : 1));
    // What stands in a folder's own entry too is told there.
    const home = (/** @type {ts.Symbol} */ symbol) => (name === "." ? modules.find((other) => other.name !== name && other.shown.some((one) => one.symbol === symbol))?.name : undefined);
    const blocks = sorted.map((one) => {
      const at = home(one.symbol);
      return [...(at === undefined ? block(checker, print, one.name, one.symbol).flatMap(brokenUp) : [`${one.name}: see settingbed/${at.slice(2)}`]), ...(at === undefined ? [""] : [])].join("\n");
    });
    return [name === "." ? "settingbed.txt" : `${name.slice(2)}.txt`, `${path.posix.join("settingbed", name)}\n\n${blocks.join("\n").trimEnd()}\n`];
  }));
}

/** What an export leads to, through every re-export. @param {ts.TypeChecker} checker @param {ts.Symbol} symbol */
function resolved(checker, symbol) {
  return (symbol.flags & ts.SymbolFlags.Alias) === 0 ? symbol : checker.getAliasedSymbol(symbol);
}

/** The lines of one name. @param {ts.TypeChecker} checker @param {ReturnType<typeof typePrinter>} print @param {string} name @param {ts.Symbol} symbol @returns {string[]} */
function block(checker, print, name, symbol) {
  const declaration = symbol.declarations?.[0];
  if (declaration === undefined) return [`${name}: nothing is known of it`];
  if (symbol.flags & ts.SymbolFlags.Class) return classLines(checker, print, name, symbol);
  if (symbol.flags & ts.SymbolFlags.Function) return functionLines(print, name, checker.getTypeOfSymbol(symbol));
  if (symbol.flags & ts.SymbolFlags.Interface) {
    const type = checker.getDeclaredTypeOfSymbol(symbol);
    return [`interface ${name}${generic(symbol)}`, ...print.members(type)];
  }
  if (symbol.flags & ts.SymbolFlags.TypeAlias) {
    const text = ts.isTypeAliasDeclaration(declaration) ? written(declaration.type) : "";
    return [`type ${name}${generic(symbol)} = ${text}`, ...print.words(checker.getDeclaredTypeOfSymbol(symbol))];
  }
  const type = checker.getTypeOfSymbol(symbol);
  const called = callableLines(checker, print, name, type);
  if (called !== undefined) return called;
  return type.getCallSignatures().length > 0 ? functionLines(print, name, type) : [`const ${name}: ${print.type(type)}`];
}

/** `<A, B extends C>` @param {ts.Symbol} symbol */
function generic(symbol) {
  const parameters = parametersOf(symbol);
  return parameters.length === 0 ? "" : `<${parameters.map(written).join(", ")}>`;
}

/** @param {ReturnType<typeof typePrinter>} print @param {string} name @param {ts.Type} type */
function functionLines(print, name, type) {
  return type.getCallSignatures().map((signature) => `function ${name}${print.signature(signature)}`);
}

/** @param {ts.TypeChecker} checker @param {ReturnType<typeof typePrinter>} print @param {string} name @param {ts.Symbol} symbol */
function classLines(checker, print, name, symbol) {
  const type = checker.getTypeOfSymbol(symbol);
  const statics = checker.getPropertiesOfType(type).filter((one) => one.name !== "prototype");
  return [
    `class ${name}${generic(symbol)}`,
    ...type.getConstructSignatures().map((signature) => `  new ${print.signature(signature)}`),
    ...statics.filter((one) => one.declarations?.some((at) => !at.getSourceFile().fileName.includes("/node_modules/")) === true).map((one) => `  static ${print.member(one)}`),
    ...print.members(checker.getDeclaredTypeOfSymbol(symbol)),
  ];
}
