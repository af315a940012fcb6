// What importing a topic adds to an empty process: medians of fresh processes, in milliseconds.
import { spawnSync } from "node:child_process";

/** @param {string} code */
function once(code) {
  const program = `const start = performance.now(); ${code}; console.log(performance.now() - start)`;
  const { stdout } = spawnSync(process.execPath, ["--input-type=module", "-e", program], { encoding: "utf8", cwd: new URL("../..", import.meta.url) });
  return Number(stdout);
}

/** @param {string} code */
function median(code) {
  const times = Array.from({ length: 15 }, () => once(code)).sort((a, b) => a - b);
  return times[7] ?? NaN;
}

for (const entry of ["joints", "film", "takeoff"]) {
  const code = `await import("settingbed/${entry}")`;
  console.log(`settingbed/${entry}: ${(median(code) - median("0")).toFixed(1)} ms`);
}
