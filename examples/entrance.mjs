// The order list of an entrance with three elevations and two columns, with weights, hours and prices.
import { readFile } from "node:fs/promises";
import { text } from "settingbed/render";
import { takeOff } from "settingbed/takeoff";

const file = await readFile(new URL("entrance.json", import.meta.url), "utf8");
const list = takeOff.try(JSON.parse(file));

if (list.ok) {
  console.log(text(list.solution, { parts: false, digits: 5 }));
  // Packs of stone by elevation, each from one lot.
  const units = list.solution.answers.lines.find(({ item }) => item === "flat units");
  if (units !== undefined) console.log(text(units.solution, { parts: false, digits: 5 }));
} else {
  for (const { message } of list.problems) console.error(message);
  process.exitCode = 1;
}
