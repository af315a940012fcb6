// Every example that a reader sees is run, and gives what it says: those of the doc comments, of the README and the docs.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import * as zodMini from "zod/mini";
import { describe, expect, it } from "vitest";
import { commentExamples, type Example, markdownExamples, plain, runExample } from "../support/examples.js";
import { importSource, type Module, sourceFiles, sourcePath } from "../support/modules.js";

const root = path.resolve(import.meta.dirname, "../..");
const modules = new Map<string, Module>(await Promise.all(sourceFiles.map(async (file) => [file, await importSource(file)] as const)));

/** `settingbed/film` as `film/index.ts`, `settingbed/catalogue` as `catalogue.ts`. */
const packages: Readonly<Record<string, Module>> = Object.fromEntries(
  [...modules].filter(([file]) => /^([^/]+\/index|[^/]+)\.ts$/.test(file)).map(([file, module]) => [`settingbed/${file.replace(/(\/index)?\.ts$/, "")}`.replace(/\/index$/, ""), module]),
);

/** All that any file exports, under its name, what users see before the rest, and zod as the sources call it. */
const scope: Module = Object.assign({ z: zodMini }, ...modules.values(), ...Object.values(packages)) as Module;

function markdownFiles(folder: string): readonly string[] {
  if (!existsSync(path.join(root, folder))) return [];
  return readdirSync(path.join(root, folder), { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".md")).map((file) => path.join(folder, file));
}

const documents = ["README.md", ...markdownFiles("docs")].filter((file) => existsSync(path.join(root, file)) && !file.startsWith(path.join("docs", "api")));
const examples: readonly (readonly [string, Example])[] = [
  ...sourceFiles.flatMap((file) => commentExamples(`src/${file}`, readFileSync(sourcePath(file), "utf8"))),
  ...documents.flatMap((file) => markdownExamples(file, readFileSync(path.join(root, file), "utf8"))),
].map((example) => [example.place, example]);

it("there are examples, and many lines that say what comes out", async () => {
  const lines = await Promise.all(examples.map(([, example]) => runExample(example, scope, packages).catch(() => [])));
  expect(examples.length).toBeGreaterThan(80);
  expect(lines.flat().length).toBeGreaterThan(examples.length);
});

describe("the example of", () => {
  it.each(examples)("%s", async (_place, example) => {
    for (const { line, found, told } of await runExample(example, scope, packages)) expect([line, plain(found, told)]).toEqual([line, told]);
  });
});

it("no two entries of the package show different things under one name", () => {
  const meanings = new Map<string, Set<unknown>>();
  for (const module of Object.values(packages)) for (const [name, value] of Object.entries(module)) meanings.set(name, (meanings.get(name) ?? new Set()).add(value));
  expect([...meanings].filter(([, values]) => values.size > 1).map(([name]) => name)).toEqual([]);
});
