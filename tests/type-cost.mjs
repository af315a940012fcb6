// What calculations cost the compiler: how many types it instantiates for the definition of each, in src, and for a program
// that calls it, from the declarations in dist; over what the same program takes without it. Counts, unlike times, are the
// same on every machine. Fails above the budgets.
//
//   node tests/type-cost.mjs [how many of the dearest to print]
import path from "node:path";
import ts from "typescript";
import { subPaths } from "./support/exports.mjs";

const budget = 1500;
const printed = Number(process.argv[2] ?? 5);
const root = path.resolve(import.meta.dirname, "..");

/** @typedef {{ id: string, name: string, from: string, definition: import("settingbed").Definition }} Found */

/** @type {Map<string, Found>} */
const found = new Map();
for (const subPath of Object.keys(subPaths()).filter((one) => one !== "." && one !== "./catalogue")) {
  const from = path.posix.join("settingbed", subPath);
  for (const [name, value] of Object.entries(await import(from))) {
    if (typeof value === "function" && typeof value.id === "string" && "definition" in value) found.set(value.id, { id: value.id, name, from, definition: value.definition });
  }
}

/** The types that checking each file instantiates, once those before it have been checked. @param {ts.Program} program @param {readonly string[]} files @returns {Map<string, number>} */
function costs(program, files) {
  const counter = /** @type {ts.Program & { getInstantiationCount: () => number }} */ (program);
  return new Map(files.map((file) => {
    const before = counter.getInstantiationCount();
    const faults = program.getSemanticDiagnostics(program.getSourceFile(file));
    if (faults.length > 0) throw new Error(ts.formatDiagnostics(faults, { getCurrentDirectory: () => root, getCanonicalFileName: (name) => name, getNewLine: () => "\n" }));
    return [file, counter.getInstantiationCount() - before];
  }));
}

/** @param {string} label @param {ReadonlyMap<string, number>} taken */
function report(label, taken) {
  const sorted = [...taken].sort((a, b) => b[1] - a[1]);
  const over = sorted.filter(([, cost]) => cost > budget);
  const middle = sorted[Math.floor(sorted.length / 2)]?.[1] ?? NaN;
  if (sorted.length < 100 || over.length > 0) process.exitCode = 1;
  console.log(`${label}: ${String(sorted.length)}, the median ${String(middle)} instantiations, ${String(over.length)} above ${String(budget)}`);
  for (const [file, cost] of sorted.slice(0, Math.max(printed, over.length))) console.log(`  ${String(cost).padStart(7)}  ${file}${cost > budget ? "  TOO MANY" : ""}`);
}

const read = ts.readConfigFile(path.join(root, "tsconfig.json"), (file) => ts.sys.readFile(file));
const { options } = ts.parseJsonConfigFileContent({ ...read.config, include: ["src"] }, ts.sys, root);

const sources = ts.createProgram([path.join(root, "src/index.ts"), path.join(root, "src/catalogue.ts")], options);
const own = sources.getSourceFiles().map(({ fileName }) => path.relative(root, fileName)).filter((file) => file.startsWith("src/"));
const defines = (/** @type {string} */ file) => (sources.getSourceFile(path.join(root, file))?.text ?? "").includes("= /* @__PURE__ */ calculation(");
// What they all need first, and one calculation besides, so that the first does not pay for all.
const [warm = "", ...rest] = own.filter(defines);
costs(sources, [...own.filter((file) => file.startsWith("src/core/") || file.startsWith("src/data/")), warm].map((file) => path.join(root, file)));
report("definitions in src", new Map([...costs(sources, rest.map((file) => path.join(root, file)))].map(([file, cost]) => [path.relative(root, file), cost])));

/** A call that compiles: every input, but one of each pair, as a text with its first unit. @param {Found} of */
function callOf({ name, from, definition: { given } }) {
  const words = new Set();
  const inputs = Object.entries(given).flatMap(([input, row]) => {
    const word = "either" in row ? row.either : undefined;
    if (word !== undefined && words.has(word)) return [];
    words.add(word);
    return [`${input}: ${row.is === "count" || row.is === "ratio" ? "1" : JSON.stringify(`1 ${String([row.unit].flat()[0])}`)}`];
  });
  return `import { ${name} } from "${from}";\nexport const answers = ${name}({ ${inputs.join(", ")} });\nexport const texts = Object.values(answers).map(String);\n`;
}

const users = new Map([...found.values()].map((one) => [path.join(root, "tests", `user-of-${one.id}.ts`), callOf(one)]));
const usual = ts.createCompilerHost(options);
/** @type {ts.CompilerHost} */
const host = {
  ...usual,
  readFile: (file) => users.get(path.normalize(file)) ?? usual.readFile(file),
  fileExists: (file) => users.has(path.normalize(file)) || usual.fileExists(file),
  getSourceFile: (file, how, ...others) => {
    const text = users.get(path.normalize(file));
    return text === undefined ? usual.getSourceFile(file, how, ...others) : ts.createSourceFile(file, text, how);
  },
};
const callers = ts.createProgram([...users.keys()], { ...options, checkJs: false, allowJs: false }, host);
const [warmUser = "", ...otherUsers] = users.keys();
costs(callers, [warmUser]);
report("calls of the package", new Map([...costs(callers, otherUsers)].map(([file, cost]) => [path.basename(file, ".ts"), cost])));
