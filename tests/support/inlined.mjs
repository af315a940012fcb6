// The packages whose code goes into dist: from files of their own a topic starts far later, for zod/mini alone is 92 of
// them. They stay dependencies, since our types name some of theirs and an audit of an app shall see them. Their licences go
// along, in dist/licences.txt.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

export const inlined = ["decimal.js", "temporal-polyfill", "temporal-utils", "zod"];

/** The licence of a package as it is written there. @param {string} name @param {string} root */
function licenceOf(name, root) {
  const folder = path.join(root, "node_modules", name);
  const file = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one));
  if (file === undefined) throw new Error(`${name} brings no text of its licence, so its code may not go into dist`);
  const { version } = JSON.parse(readFileSync(path.join(folder, "package.json"), "utf8"));
  return `${name} ${version}\n\n${readFileSync(path.join(folder, file), "utf8").trim()}\n`;
}

/** Writes their licences beside them; fails where code of another package has come in. @returns {import("esbuild").Plugin} */
export function licencesOfInlined() {
  return {
    name: "licences of what is inlined",
    setup(build) {
      build.initialOptions.metafile = true;
      build.onEnd(({ metafile }) => {
        const found = Object.keys(metafile?.inputs ?? {}).flatMap((file) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1] ?? []);
        const names = [...new Set(found)].sort();
        if (names.join() !== inlined.join()) throw new Error(`dist has code of ${names.join(", ")}; tests/support/inlined.mjs names ${inlined.join(", ")}`);
        mkdirSync("dist", { recursive: true });
        const head = "settingbed holds code of these packages, each under the licence that follows it.\n";
        writeFileSync("dist/licences.txt", [head, ...names.map((name) => licenceOf(name, "."))].join(`\n${"-".repeat(80)}\n\n`));
      });
    },
  };
}
