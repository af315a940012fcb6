// The modules of src and tests in one process, each as a function that can be run anew: a changed file costs only itself
// and what imports it. Packages and Node's own modules are loaded once.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import vm from "node:vm";
import { transformSync } from "esbuild";
import { mocksIn } from "./mocks.mjs";

/** @typedef {(exports: unknown, require: (id: string) => unknown, module: { exports: unknown }, filename: string, dirname: string) => void} Code */

/** @param {string} file @param {string} text @returns {Code} */
function compiled(file, text) {
  const { code } = transformSync(text, {
    loader: "ts",
    format: "cjs",
    platform: "node",
    target: "node20",
    sourcefile: file,
    supported: { "dynamic-import": false },
    define: { "import.meta.dirname": "__dirname", "import.meta.filename": "__filename" },
  });
  return /** @type {Code} */ (vm.compileFunction(code, ["exports", "require", "module", "__filename", "__dirname"], { filename: file }));
}

/** Whether a text is TypeScript at all. @param {string} file @param {string} text */
export function reads(file, text) {
  try {
    compiled(file, text);
    return true;
  } catch {
    return false;
  }
}

export class Modules {
  /** @param {string} root @param {Readonly<Record<string, unknown>>} instead - what stands in for packages, by name */
  constructor(root, instead) {
    this.instead = instead;
    this.packages = createRequire(path.join(root, "package.json"));
    /** @type {Map<string, Code>} */
    this.code = new Map();
    /** @type {Map<string, { exports: unknown }>} */
    this.loaded = new Map();
    /** @type {Map<string, Set<string>>} */
    this.importers = new Map();
    /** @type {Map<string, string>} */
    this.changed = new Map();
    /** What stands in for modules while a test file runs that replaces them. @type {Map<string, unknown>} */
    this.replaced = new Map();
  }

  /** @param {string} file - the full path of a TypeScript file @returns {unknown} what it exports */
  load(file) {
    if (this.replaced.has(file)) return this.replaced.get(file);
    const known = this.loaded.get(file);
    if (known !== undefined) return known.exports;
    const module = { exports: {} };
    this.loaded.set(file, module);
    try {
      this.#codeOf(file)(module.exports, (id) => this.#required(id, file), module, file, path.dirname(file));
    } catch (error) {
      this.loaded.delete(file);
      throw error;
    }
    return module.exports;
  }

  /** @param {string} file */
  #codeOf(file) {
    const changed = this.changed.get(file);
    if (changed !== undefined) return compiled(file, changed);
    const code = this.code.get(file) ?? compiled(file, readFileSync(file, "utf8"));
    this.code.set(file, code);
    return code;
  }

  /** @param {string} id @param {string} by */
  #required(id, by) {
    if (Object.hasOwn(this.instead, id)) return this.instead[id];
    if (!id.startsWith(".")) return /** @type {unknown} */ (this.packages(id));
    const file = path.resolve(path.dirname(by), id.replace(/\.js$/, ".ts"));
    if (/\.(mjs|json)$/.test(file)) return /** @type {unknown} */ (createRequire(by)(file));
    const importers = this.importers.get(file) ?? new Set();
    this.importers.set(file, importers.add(by));
    return this.load(file);
  }

  /**
   * Loads a test file with what it replaces modules with, until `bringBack`.
   *
   * @param {string} file @param {(hoisted: readonly unknown[]) => void} hoist - takes what the file asks to be hoisted
   */
  async loadTest(file, hoist) {
    this.forget(file);
    const before = mocksIn(readFileSync(file, "utf8"));
    if (before !== undefined) {
      /** @type {{ hoisted: unknown[], mocks: { from: string, factory: (original: () => Promise<unknown>) => Promise<unknown> }[] }} */
      const exports = { hoisted: [], mocks: [] };
      const module = { exports };
      compiled(file, before)(exports, (id) => this.#required(id, file), module, file, path.dirname(file));
      hoist(module.exports.hoisted);
      for (const { from, factory } of module.exports.mocks) {
        const mocked = path.resolve(path.dirname(file), from.replace(/\.js$/, ".ts"));
        const real = this.load(mocked);
        const instead = await factory(() => Promise.resolve(real));
        this.forget(mocked);
        this.replaced.set(mocked, instead);
      }
    }
    this.load(file);
  }

  /** Takes back what was replaced. */
  bringBack() {
    for (const file of this.replaced.keys()) this.forget(file);
    this.replaced.clear();
  }

  /** Forgets a file and all that imports it. @param {string} file */
  forget(file) {
    const dropped = new Set([file]);
    for (const one of dropped) for (const importer of this.importers.get(one) ?? []) dropped.add(importer);
    for (const one of dropped) this.loaded.delete(one);
  }

  /** Puts another text in the place of a file's, or the file's own again. @param {string} file @param {string} [text] */
  change(file, text) {
    if (text === undefined) this.changed.delete(file);
    else this.changed.set(file, text);
    this.forget(file);
  }

  /** All files that a file reaches, itself among them. @param {string} file @returns {ReadonlySet<string>} */
  reachedFrom(file) {
    const reached = new Set([file]);
    for (const one of reached) for (const [imported, importers] of this.importers) if (importers.has(one)) reached.add(imported);
    return reached;
  }
}
