// What an editor shows where a cursor rests: TypeScript itself is asked, as an editor asks it. What inputs are stands in the built
// declarations: see tests/hover.mjs.
import path from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";

const root = path.resolve(import.meta.dirname, "../..");
const file = path.join(root, "tests/core/scratch-of-hover.ts");
const text = `
import { coatingOrder } from "../../src/film/coating-order.js";
import { takeOff } from "../../src/takeoff/take-off.js";
coatingOrder({ area: "3850 ft2", wetFilm: "35 mil", coats: 1, lossShare: "30 %", packVolume: "5 gal" });
takeOff({ measuredTo: "backing", elevations: [], layers: [{ kind: "studs", spacing: "16 in" }], packs: {}, allowances: {} });
`;
const { options } = ts.parseJsonConfigFileContent({ ...ts.readConfigFile(path.join(root, "tsconfig.json"), (one) => ts.sys.readFile(one)).config, include: [] }, ts.sys, root);
const editor = ts.createLanguageService({
  getScriptFileNames: () => [file],
  getScriptVersion: () => "1",
  getScriptSnapshot: (name) => {
    const found = name === file ? text : ts.sys.readFile(name);
    return found === undefined ? undefined : ts.ScriptSnapshot.fromString(found);
  },
  getCurrentDirectory: () => root,
  getCompilationSettings: () => options,
  getDefaultLibFileName: (of) => ts.getDefaultLibFilePath(of),
  fileExists: (name) => name === file || ts.sys.fileExists(name),
  readFile: (name) => (name === file ? text : ts.sys.readFile(name)),
});

/** What is shown of the last place of a word: its type, and its doc comment. */
function hover(word: string): { readonly type: string; readonly doc: string } {
  const info = editor.getQuickInfoAtPosition(file, text.lastIndexOf(word));
  return { type: ts.displayPartsToString(info?.displayParts), doc: ts.displayPartsToString(info?.documentation) };
}

it("a function shows its own doc comment", () => {
  expect(hover("coatingOrder({").doc).toContain("loss");
  expect(hover("takeOff({").doc).toContain("order list");
});

it("a quantity in nested input shows its dimension, and not all there are", () => {
  expect(hover("spacing").type).toBe('(property) spacing: QuantityInput<"length">');
});

it("the program that is looked at compiles", () => {
  expect(editor.getSemanticDiagnostics(file)).toEqual([]);
});
