// What a fresh process loads for each sub-path: how many files, and how many bytes it has to parse. Times differ from machine
// to machine and run to run, these do not, so these are held; `npm run bench` shows the times.
//
//   node tests/cold-start.mjs            prints both for each sub-path, and fails above a limit
import { build } from "esbuild";
import path from "node:path";
import { subPaths } from "./support/exports.mjs";

/** The most files and the most thousands of bytes, as ESM. CommonJS has more words to export with, and may take a tenth more. */
const limits = /** @type {Record<string, readonly [files: number, kilobytes: number]>} */ ({
  ".": [23, 1030],
  "./boards": [8, 420],
  "./catalogue": [26, 1290],
  "./core": [2, 160],
  "./exercise": [2, 190],
  "./fasteners": [4, 230],
  "./film": [5, 310],
  "./joints": [6, 310],
  "./layout": [11, 660],
  "./limits": [6, 330],
  "./many": [3, 215],
  "./membrane": [7, 350],
  "./mortar": [9, 590],
  "./movement": [7, 330],
  "./pictures": [2, 240],
  "./planning": [10, 700],
  "./render": [2, 200],
  "./schema": [3, 280],
  "./shapes": [5, 290],
  "./sheet": [8, 470],
  "./takeoff": [17, 735],
  "./timing": [6, 540],
  "./units": [6, 180],
  "./weather": [7, 590],
  "./wording": [2, 300],
});

/** @param {string} name @param {"import" | "require"} kind */
async function loaded(name, kind) {
  const { metafile } = await build({
    stdin: { contents: kind === "import" ? `import "${name}";` : `require("${name}");`, resolveDir: import.meta.dirname },
    bundle: true, platform: "node", format: kind === "import" ? "esm" : "cjs", ignoreAnnotations: true, write: false, metafile: true, logLevel: "error",
  });
  const files = Object.entries(metafile.inputs).filter(([file]) => file !== "<stdin>");
  return { files: files.length, bytes: files.reduce((all, [, { bytes }]) => all + bytes, 0), packages: [...new Set(files.flatMap(([file]) => /node_modules\/([^/]+)/.exec(file)?.[1] ?? []))] };
}

console.log("files and bytes that a fresh process loads, against the limit");
for (const subPath of Object.keys(subPaths())) {
  const limit = limits[subPath];
  const name = path.posix.join("settingbed", subPath);
  for (const kind of /** @type {const} */ (["import", "require"])) {
    const { files, bytes, packages } = await loaded(name, kind);
    const most = limit === undefined ? [0, 0] : [limit[0], limit[1] * (kind === "import" ? 1000 : 1100)];
    const faults = [
      ...(limit === undefined ? ["HAS NO LIMIT"] : []),
      ...(files > (most[0] ?? 0) ? ["TOO MANY FILES"] : []),
      ...(bytes > (most[1] ?? 0) ? ["TOO MANY BYTES"] : []),
    ];
    if (faults.length > 0) process.exitCode = 1;
    const from = packages.length === 0 ? "" : `, with ${packages.join(", ")}`;
    console.log(`${kind.padEnd(8)}${name.padEnd(24)}${String(files).padStart(4)} /${String(most[0]).padStart(3)}${String(bytes).padStart(9)} /${String(most[1]).padStart(8)}  ${faults.join("; ") || "ok"}${from}`);
  }
}
