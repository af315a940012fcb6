// The files of src: what each reaches of the others, and which packages it imports.
import { readdirSync } from "node:fs";
import path from "node:path";
import { build } from "esbuild";

/**
 * @typedef {object} Graph
 * @property {readonly string[]} files - every file, from `src/` on
 * @property {(from: readonly string[]) => string[]} reach - these and all that they import, however far off, but no entries
 * @property {(file: string) => string[]} packagesOf - what it imports of others
 * @property {(file: string) => number} bytesOf - how long its source is
 */

/** @param {string} file */
export const roomOf = (file) => file.split("/")[1] ?? "";
/** Whether it is an entry: the index of a room, or a file of src itself. @param {string} file */
export const isEntry = (file) => /^src\/[^/]+(\/index)?\.ts$/.test(file);

/** @param {string} root @returns {Promise<Graph>} */
export async function sourceGraph(root) {
  const files = readdirSync(path.join(root, "src"), { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts")).map((file) => path.posix.join("src", file.replaceAll(path.sep, "/")));
  const { metafile: { inputs } } = await build({ absWorkingDir: root, entryPoints: files, bundle: true, packages: "external", format: "esm", outdir: "unwritten", write: false, metafile: true });
  return {
    files,
    reach(from) {
      const reached = new Set(from);
      for (const file of reached) for (const { path: to } of inputs[file]?.imports ?? []) if (to in inputs) reached.add(to);
      return [...reached].filter((file) => !isEntry(file));
    },
    packagesOf: (file) => (inputs[file]?.imports ?? []).filter(({ external }) => external).map(({ path: name }) => name),
    bytesOf: (file) => inputs[file]?.bytes ?? 0,
  };
}
