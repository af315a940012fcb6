// The report of what can be called: inputs with dimension, units, limits and default, answers with theirs. Titles,
// symbols, formulas and bases are left out: they are no part of the type that an app is built against.
import ts from "typescript";

const limits = ["above", "atLeast", "below", "atMost"];

/**
 * The lines of a calculation or a composed function; nothing where it is neither.
 *
 * @param {ts.TypeChecker} checker
 * @param {ReturnType<typeof import("./print-type.mjs").typePrinter>} print
 * @param {string} name
 * @param {ts.Type} type
 * @returns {string[] | undefined}
 */
export function callableLines(checker, print, name, type) {
  const [call] = type.getCallSignatures();
  const [definition, given, reads] = ["definition", "given", "reads"].map((key) => part(checker, type, key));
  if (call === undefined || part(checker, type, "solve") === undefined) return undefined;
  if (definition !== undefined) {
    const id = part(checker, definition, "id");
    const head = `calculation ${name}: ${id === undefined ? "" : checker.typeToString(id)}`;
    return [head, ...rows(checker, "given", part(checker, definition, "given")), ...rows(checker, "answer", part(checker, definition, "steps"))];
  }
  if (given === undefined && reads === undefined) return undefined;
  const input = call.getParameters()[0];
  const inputs = given === undefined ? input === undefined ? [] : members("given", checker.getTypeOfSymbol(input)) : rows(checker, "given", given);
  return [`composed ${name}`, ...inputs, ...members("answer", call.getReturnType())];

  /** @param {string} word @param {ts.Type} of */
  function members(word, of) {
    const isPlain = (of.flags & ts.TypeFlags.Object) !== 0 && !checker.isArrayType(of);
    return isPlain ? print.members(of).map((line) => `  ${word} ${line.trim()}`) : [`  ${word}: ${print.type(of)}`];
  }
}

/** The type of a property, if there is one. @param {ts.TypeChecker} checker @param {ts.Type} type @param {string} name */
function part(checker, type, name) {
  const symbol = checker.getPropertyOfType(type, name);
  return symbol === undefined ? undefined : checker.getTypeOfSymbol(symbol);
}

/** A line for each row of a definition. @param {ts.TypeChecker} checker @param {string} word @param {ts.Type | undefined} type @returns {string[]} */
function rows(checker, word, type) {
  return type === undefined ? [] : checker.getPropertiesOfType(type).map((symbol) => `  ${word} ${row(checker, symbol)}`);
}

/** @param {ts.TypeChecker} checker @param {ts.Symbol} symbol */
function row(checker, symbol) {
  const type = checker.getTypeOfSymbol(symbol);
  /** @param {string} key */
  const text = (key) => {
    const found = part(checker, type, key);
    return found === undefined || (found.flags & ts.TypeFlags.Undefined) !== 0 ? undefined : checker.typeToString(found, undefined, ts.TypeFormatFlags.NoTruncation);
  };
  const may = text("default") !== undefined || text("optional") !== undefined ? "?" : "";
  const told = [
    text("is")?.replaceAll('"', "") ?? `one of ${text("oneOf")?.replace(/^readonly /, "") ?? ""}`,
    ...["unit", ...limits, "whole", "either", "default"].flatMap((key) => (text(key) === undefined ? [] : [`${key} ${text(key)?.replace(/^readonly /, "") ?? ""}`])),
  ];
  return `${symbol.name}${may}: ${told.join(", ")}`;
}
