// An esbuild plugin for the build: few chunks. A bundler that splits makes a chunk of the files that the same entries
// reach, and since every topic reaches other files of core, core fell into a dozen. So an entry that reaches a room of src
// takes all of it, and the room is one chunk; but not where the rest of a room would bring in rooms or packages that the entry
// does without. What is then left as a small chunk goes with one that more entries need, since a file more takes longer to find and
// open than some kilobytes to read.
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { isEntry, roomOf, sourceGraph } from "./source-graph.mjs";

/** @typedef {import("./source-graph.mjs").Graph} Graph */

// tsup makes one file of its config and what that imports, so a place told from this file would be another.
const root = process.cwd();

const reexported = "?reexported";
/** Rooms of which each topic needs a small part: its own tables; reading nested input, but no JSON Schema. */
const inParts = ["data", "schema"];
/** The room that is one chunk whatever it brings in: next to everything needs it. */
const ground = "core";
/** A chunk of fewer bytes of source is put to one that more entries need. */
const small = 12_000;

/** Files that the same entries take. @typedef {{ files: string[], by: string[], bytes: number }} Chunk */

/** @param {string} file */
const relative = (file) => path.relative(root, file).replaceAll(path.sep, "/");

/** What is to be taken: for each entry, the files. @typedef {Map<string, Set<string>>} Taken */

/** Each entry takes what it reaches, and the whole rooms of that. @param {Graph} graph @returns {Taken} */
function wholeRooms({ files, reach, packagesOf }) {
  /** @param {string} room */
  const allOf = (room) => files.filter((file) => !isEntry(file) && roomOf(file) === room);
  /** The rooms of files, and the packages that they import. @param {readonly string[]} from */
  const placesOf = (from) => new Set(from.flatMap((file) => [roomOf(file), ...packagesOf(file)]));
  return new Map(files.filter(isEntry).map((entry) => {
    const reached = placesOf(reach([entry]));
    const whole = [...reached].filter((room) => room === ground || (!inParts.includes(room) && [...placesOf(reach(allOf(room)))].every((place) => reached.has(place))));
    return [entry, new Set(reach([entry, ...whole.flatMap(allOf)]))];
  }));
}

/** Has small chunks taken by all entries of a larger one. @param {Taken} taken @param {Graph} graph */
function hostSmallChunks(taken, { files, reach, packagesOf, bytesOf }) {
  /** @param {(all: ReadonlySet<string>) => boolean} which */
  const entriesWith = (which) => [...taken].filter(([, all]) => which(all)).map(([entry]) => entry);
  /** @type {Map<string, Chunk>} */
  const chunks = new Map();
  for (const file of files) {
    const by = entriesWith((all) => all.has(file));
    const chunk = chunks.get(by.join()) ?? { files: [], by, bytes: 0 };
    chunk.files.push(file);
    chunk.bytes += bytesOf(file);
    chunks.set(by.join(), chunk);
  }
  // The chunk into which the code of a package goes takes none in: who bundles a calculation would not be rid of the package.
  const packages = [...new Set(files.flatMap(packagesOf))].map((name) => entriesWith((all) => files.some((file) => all.has(file) && packagesOf(file).includes(name))).join());
  const hosts = [...chunks.values()].filter(({ files: [first = ""], by, bytes }) => bytes > small && (roomOf(first) === ground || !packages.includes(by.join())));
  hosts.sort((one, other) => one.by.length - other.by.length);
  for (const chunk of chunks.values()) {
    if (chunk.bytes > small || chunk.by.length < 2) continue;
    const needs = reach(chunk.files).filter((file) => !chunk.files.includes(file));
    const host = hosts.find(({ by }) => chunk.by.every((entry) => by.includes(entry)) && by.every((entry) => needs.every((file) => taken.get(entry)?.has(file))));
    for (const entry of host?.by ?? []) for (const file of chunk.files) taken.get(entry)?.add(file);
  }
}

/** @returns {import("esbuild").Plugin} */
export function fewChunks() {
  return {
    name: "few chunks",
    async setup(bundler) {
      const graph = await sourceGraph(root);
      const taken = wholeRooms(graph);
      hostSmallChunks(taken, graph);
      bundler.onLoad({ filter: /[/\\]src[/\\]([^/\\]+[/\\]index|[^/\\]+)\.ts$/ }, ({ path: file, suffix }) => {
        const files = suffix === reexported ? [] : [...(taken.get(relative(file)) ?? [])];
        const imports = files.map((one) => `import "./${path.posix.relative(path.posix.dirname(relative(file)), one)}";\n`);
        return { contents: imports.join("") + readFileSync(file, "utf8"), loader: "ts" };
      });
      bundler.onResolve({ filter: /^\.\.?\// }, ({ path: asked, resolveDir, kind }) => {
        const file = path.resolve(resolveDir, asked.replace(/\.js$/, ".ts"));
        if (kind === "entry-point" || !relative(file).startsWith("src/") || !existsSync(file)) return undefined;
        // An entry that others export again is another file there, or it would be a chunk of its own with nothing in it.
        if (isEntry(relative(file))) return { path: file, suffix: reexported };
        // By package.json all of src is free of side effects, and an import for nothing else would be left out.
        return { path: file, sideEffects: true };
      });
    },
  };
}
