// What a fresh process loads for each sub-path: how many files, and how many bytes it has to parse. Times differ from machine
// to machine and run to run, these do not, so these are held; `npm run bench` shows the times.
//
//   node tests/cold-start.mjs            prints both for each sub-path, and fails above a limit
import { build } from "esbuild";
import path from "node:path";
import { subPaths } from "./support/exports.mjs";

/** The most files and the most thousands of bytes, as ESM. CommonJS has more words to export with, and may take a tenth more. */
const limits = /** @type {Record<string, readonly [files: number, kilobytes: number]>} */ ({
  ".": [19, 1030],
  "./answers": [3, 240],
  "./boards": [6, 420],
  "./catalogue": [22, 1300],
  "./core": [2, 150],
  "./exercise": [2, 180],
  "./fasteners": [3, 220],
  "./film": [4, 310],
  "./joints": [4, 300],
  "./layout": [7, 410],
  "./limits": [5, 330],
  "./many": [3, 220],
  "./membrane": [6, 350],
  "./mortar": [6, 330],
  "./movement": [5, 330],
  "./pictures": [2, 230],
  "./planning": [9, 690],
  "./render": [2, 190],
  "./schema": [3, 270],
  "./shapes": [4, 300],
  "./sheet": [8, 470],
  "./takeoff": [12, 730],
  "./timing": [6, 530],
  "./units": [6, 170],
  "./weather": [7, 590],
  "./wording": [2, 330],
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
