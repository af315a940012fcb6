// Everything that src exports, found by reading the folder: what is new is checked without a list to keep.
import { readdirSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { Callable } from "../../src/core/callable.js";
import type { Definition, Entries } from "../../src/core/definition.js";
import type { StandardSchema } from "../../src/core/standard-schema.js";

const src = path.resolve(import.meta.dirname, "../../src");

export type Module = Readonly<Record<string, unknown>>;

/** The files of src, as `fasteners/board-screws.ts`. */
export const sourceFiles: readonly string[] = readdirSync(src, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .map((file) => file.replaceAll(path.sep, "/"))
  .sort();

/** The path of a file of src. */
export const sourcePath = (file: string): string => path.join(src, file);

/** A file of src, as a module. */
export async function importSource(file: string): Promise<Module> {
  return (await import(pathToFileURL(sourcePath(file)).href)) as Module;
}

/** An entry of the package: the folder whose index it is. */
export interface Topic {
  readonly topic: string;
  readonly module: Module;
}

/** The index of every folder of src. */
export async function allTopics(): Promise<readonly Topic[]> {
  const entries = sourceFiles.filter((file) => /^[^/]+\/index\.ts$/.test(file));
  return Promise.all(entries.map(async (file) => ({ topic: file.split("/")[0] ?? "", module: await importSource(file) })));
}

/** A calculation or a composed function, with the name and the file that export it. */
export interface Found {
  readonly file: string;
  readonly topic: string;
  readonly name: string;
  readonly run: Callable<never, Readonly<Record<string, unknown>>> & { readonly definition?: Definition; readonly given?: Entries; readonly reads?: StandardSchema };
}

function isRun(value: unknown): value is Found["run"] {
  return typeof value === "function" && "solve" in value && "try" in value && "id" in value;
}

/** Every calculation and composed function of every file, each once. */
export async function allFound(): Promise<readonly Found[]> {
  const files = sourceFiles.filter((file) => file.includes("/") && !file.endsWith("/index.ts"));
  const modules = await Promise.all(files.map(async (file) => [file, await importSource(file)] as const));
  return modules.flatMap(([file, module]) => Object.entries(module).flatMap(([name, run]) => (isRun(run) ? [{ file, topic: file.split("/")[0] ?? "", name, run }] : [])));
}

/** A calculation made of formulas. */
export interface FoundCalculation extends Found {
  readonly definition: Definition;
}

/** Every calculation made of formulas. */
export async function allCalculations(): Promise<readonly FoundCalculation[]> {
  return (await allFound()).flatMap((found) => (found.run.definition === undefined ? [] : [{ ...found, definition: found.run.definition }]));
}
