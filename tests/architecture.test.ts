import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { expect, test } from "vitest";
import { readPackage } from "./support/exports.mjs";

// Who may import whom among the folders of src: a room may import from itself and from those listed for it.

const topics = ["fasteners", "boards", "film", "membrane", "mortar", "joints", "timing", "weather", "layout", "limits", "movement"];
const ground = ["data", "core", "schema", "shapes"];

const mayImport: Readonly<Record<string, readonly string[]>> = {
  core: [],
  data: ["core"],
  units: ["core"],
  wording: ["core", ...topics, "schema", "shapes", "takeoff", "planning", "pictures", "exercise", "many", "sheet"],
  schema: ["core"],
  answers: ["core", "schema"],
  shapes: ["data", "schema", "core"],
  ...Object.fromEntries(topics.map((topic) => [topic, [...ground, ...topics]])),
  takeoff: [...ground, ...topics, "planning", "many"],
  planning: [...ground, ...topics],
  pictures: ["core", "shapes", ...topics],
  render: ["core"],
  exercise: ["core"],
  many: ["core"],
  sheet: ["core", "render"],
  "catalogue.ts": ["core", "shapes", ...topics, "takeoff", "planning"],
  "index.ts": ["core", "shapes", ...topics],
};

interface Import {
  /** A file under src, or the name of a package. */
  readonly to: string;
  readonly ours: boolean;
  readonly typesOnly: boolean;
}

const src = path.resolve(import.meta.dirname, "../src");

const sources = new Map(
  readdirSync(src, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => file.replaceAll(path.sep, "/"))
    .map((file) => [file, ts.createSourceFile(file, readFileSync(path.join(src, file), "utf8"), ts.ScriptTarget.Latest)]),
);

/** What is no code but imported like it. */
const data = new Set(readdirSync(src, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".json")).map((file) => file.replaceAll(path.sep, "/")));

const imports = new Map([...sources].map(([file, source]) => [file, importsOf(file, source)]));

function importsOf(file: string, source: ts.SourceFile): readonly Import[] {
  const found: Import[] = [];
  const add = (name: ts.Node | undefined, typesOnly: boolean): void => {
    if (name === undefined || !ts.isStringLiteralLike(name)) return;
    const ours = name.text.startsWith(".");
    const to = ours ? path.posix.join(path.posix.dirname(file), name.text).replace(/\.js$/, ".ts") : name.text;
    found.push({ to, ours, typesOnly });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) add(node.moduleSpecifier, node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword);
    else if (ts.isExportDeclaration(node)) add(node.moduleSpecifier, node.isTypeOnly);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) add(node.argument.literal, true);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) add(node.arguments[0], false);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const roomOf = (file: string): string => file.split("/")[0] ?? file;
const isZod = (name: string): boolean => name === "zod" || name.startsWith("zod/");

/** Where an import leads from a file, through files of ours, by imports that are there at run time. */
function reach(file: string, seen = new Map<string, readonly Import[]>()): ReadonlyMap<string, readonly Import[]> {
  if (seen.has(file)) return seen;
  const real = (imports.get(file) ?? []).filter(({ typesOnly }) => !typesOnly);
  seen.set(file, real);
  for (const { to, ours } of real) if (ours) reach(to, seen);
  return seen;
}

test("every import of ours leads to a file, and every room has its rule", () => {
  const lost = [...imports].flatMap(([file, list]) => list.filter(({ to, ours }) => ours && !sources.has(to) && !data.has(to)).map(({ to }) => `${file} imports ${to}`));
  expect(lost).toEqual([]);
  expect([...sources.keys()].map(roomOf).filter((room) => !Object.hasOwn(mayImport, room))).toEqual([]);
});

test("imports run one way", () => {
  const wrong = [...imports].flatMap(([file, list]) => {
    const [room, allowed] = [roomOf(file), mayImport[roomOf(file)] ?? []];
    const bad = list.filter(({ to, ours, typesOnly }) => {
      if (!ours || roomOf(to) === room) return false;
      // Data knows of the engine only its types, and the wordings know of the topics only what there is to word.
      return !allowed.includes(roomOf(to)) || (!typesOnly && (room === "data" || (room === "wording" && roomOf(to) !== "core")));
    });
    return bad.map(({ to }) => `${file} imports ${to}`);
  });
  expect(wrong).toEqual([]);
});

test("no file imports itself in a circle", () => {
  const circles: string[] = [];
  const done = new Set<string>();
  const walk = (file: string, trail: readonly string[]): void => {
    if (trail.includes(file)) circles.push([...trail.slice(trail.indexOf(file)), file].join(" > "));
    if (done.has(file) || trail.includes(file)) return;
    for (const { to, ours } of imports.get(file) ?? []) if (ours) walk(to, [...trail, file]);
    done.add(file);
  };
  for (const file of sources.keys()) walk(file, []);
  expect(circles).toEqual([]);
});

test("packages are those package.json names; zod is zod/mini, and not in core or data", () => {
  const named = Object.keys(readPackage().dependencies);
  const wrong = [...imports].flatMap(([file, list]) => {
    const zodHere = roomOf(file) !== "core" && roomOf(file) !== "data";
    const bad = list.filter(({ to, ours }) => !ours && (isZod(to) ? to !== "zod/mini" || !zodHere : !named.includes(to)));
    return bad.map(({ to }) => `${file} imports ${to}`);
  });
  expect(wrong).toEqual([]);
});

/** The calls that make a constant of the file by one of these functions. */
function callsOf(makers: readonly string[], source: ts.SourceFile): readonly ts.CallExpression[] {
  return source.statements
    .filter(ts.isVariableStatement)
    .flatMap(({ declarationList }) => declarationList.declarations.map(({ initializer }) => initializer))
    .filter((one) => one !== undefined)
    .filter(ts.isCallExpression)
    .filter(({ expression }) => makers.includes(expression.getText(source)));
}

test("a calculation made of formulas brings no zod with it", () => {
  const wrong = [...sources].filter(([, source]) => callsOf(["calculation"], source).length > 0).flatMap(([start]) =>
    [...reach(start)].filter(([, list]) => list.some(({ to }) => isZod(to))).map(([file]) => `${start} reaches zod in ${file}`),
  );
  expect(wrong).toEqual([]);
});

test("a bundler may drop every calculation and composed function that is not used", () => {
  const kept = [...sources].filter(([, source]) => callsOf(["calculation", "composed"], source).some((call) => !call.getFullText(source).includes("/* @__PURE__ */")));
  expect(kept.map(([file]) => `${file} wants /* @__PURE__ */`)).toEqual([]);
});
