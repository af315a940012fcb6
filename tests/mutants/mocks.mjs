// What a test file replaces modules with: its `vi.mock(import("…"), factory)` and the values of `vi.hoisted`, as code of their
// own that can be run before the file.
import ts from "typescript";

/** @param {ts.Node} node @param {string} name */
const isOfVi = (node, name) => ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression) && node.expression.expression.getText() === "vi" && node.expression.name.text === name;

/**
 * @param {string} text - a test file
 * @returns {string | undefined} a module that exports `hoisted`, the values in order, and `mocks`, each a path as the file
 * imports it and the factory; nothing where the file replaces no module
 */
export function mocksIn(text) {
  const source = ts.createSourceFile("test.ts", text, ts.ScriptTarget.ES2022, true, ts.ScriptKind.TS);
  /** @type {string[]} */
  const hoisted = [];
  /** @type {string[]} */
  const mocks = [];
  const before = source.statements.flatMap((statement) => {
    const [declared] = ts.isVariableStatement(statement) ? statement.declarationList.declarations : [];
    if (declared?.initializer !== undefined && isOfVi(declared.initializer, "hoisted")) {
      const { arguments: [make] } = /** @type {ts.CallExpression} */ (declared.initializer);
      hoisted.push(declared.name.getText());
      return [`const ${declared.name.getText()} = (${make?.getText() ?? ""})();`];
    }
    if (ts.isExpressionStatement(statement) && isOfVi(statement.expression, "mock")) {
      const { arguments: [imported, factory] } = /** @type {ts.CallExpression} */ (statement.expression);
      const [from] = imported !== undefined && ts.isCallExpression(imported) ? imported.arguments : [];
      mocks.push(`{ from: ${from?.getText() ?? ""}, factory: ${factory?.getText() ?? ""} }`);
    }
    return [];
  });
  return mocks.length === 0 ? undefined : [...before, `export const hoisted = [${hoisted.join(", ")}];`, `export const mocks = [${mocks.join(", ")}];`].join("\n");
}
