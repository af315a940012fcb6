// An esbuild plugin for the build: few chunks. A bundler that splits makes a chunk of the files that the same entries
// reach, and since every topic reaches other files of core, core fell into a dozen. So an entry that reaches a room of src
// takes all of it, and the room is one chunk; but not where the rest of a room would bring in rooms that the entry does
// without.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { build } from "esbuild";

// tsup makes one file of its config and what that imports, so a place told from this file would be another.
const root = process.cwd();

const reexported = "?reexported";
/** Rooms of which each topic needs a small part: its own tables; reading nested input, but no JSON Schema. */
const inParts = ["data", "schema"];

/** @param {string} file */
const relative = (file) => path.relative(root, file).replaceAll(path.sep, "/");
/** @param {string} file */
const roomOf = (file) => file.split("/")[1] ?? "";
/** Whether it is an entry: the index of a room, or a file of src itself. @param {string} file */
const isEntry = (file) => /^src\/[^/]+(\/index)?\.ts$/.test(file);

/** @returns {Promise<ReadonlyMap<string, readonly string[]>>} each entry, with the files it is to take besides */
async function filesBesides() {
  const files = readdirSync(path.join(root, "src"), { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts")).map((file) => path.posix.join("src", file.replaceAll(path.sep, "/")));
  const { metafile } = await build({ absWorkingDir: root, entryPoints: files, bundle: true, packages: "external", format: "esm", outdir: "unwritten", write: false, metafile: true });
  /** @param {readonly string[]} from */
  const reach = (from) => {
    const reached = new Set(from);
    for (const file of reached) for (const { path: to } of metafile.inputs[file]?.imports ?? []) if (to in metafile.inputs) reached.add(to);
    return [...reached].filter((file) => !isEntry(file));
  };
  /** @param {string} room */
  const allOf = (room) => files.filter((file) => !isEntry(file) && roomOf(file) === room);
  return new Map(files.filter(isEntry).map((entry) => {
    const reached = new Set(reach([entry]).map(roomOf));
    const whole = [...reached].filter((room) => !inParts.includes(room) && reach(allOf(room)).every((file) => reached.has(roomOf(file))));
    return [entry, whole.flatMap(allOf)];
  }));
}

/** @returns {import("esbuild").Plugin} */
export function wholeRooms() {
  return {
    name: "whole rooms",
    async setup(bundler) {
      const besides = await filesBesides();
      bundler.onLoad({ filter: /[/\\]src[/\\]([^/\\]+[/\\]index|[^/\\]+)\.ts$/ }, ({ path: file, suffix }) => {
        const files = suffix === reexported ? [] : (besides.get(relative(file)) ?? []);
        const taken = files.map((one) => `import "./${path.posix.relative(path.posix.dirname(relative(file)), one)}";\n`);
        return { contents: taken.join("") + readFileSync(file, "utf8"), loader: "ts" };
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
