// A change order: the entrance gets a wider door and a thicker bed. What changes in the order, and why?
import { readFile } from "node:fs/promises";
import { text } from "settingbed/render";
import { compareTakeOffs } from "settingbed/takeoff";

const file = await readFile(new URL("entrance.json", import.meta.url), "utf8");
const changed = file
  .replace('"name": "entrance", "shape": { "kind": "rectangle", "width": "8 ft"', '"name": "entrance", "shape": { "kind": "rectangle", "width": "10 ft"')
  .replace('"thickness": "3/8 in"', '"thickness": "1/2 in"');

/** @type {unknown} */
const before = JSON.parse(file);
/** @type {unknown} */
const after = JSON.parse(changed);

const order = compareTakeOffs.try({ before, after });

if (order.ok) {
  console.log(text(order.solution, { parts: false, digits: 5 }));
} else {
  for (const { message } of order.problems) console.error(message);
  process.exitCode = 1;
}
