// The order list of one wall, and how one of its figures came about.
import { readFile } from "node:fs/promises";
import { text } from "settingbed/render";
import { takeOff } from "settingbed/takeoff";

const file = await readFile(new URL("wall.json", import.meta.url), "utf8");
const job = /** @type {import("settingbed/takeoff").Job} */ (JSON.parse(file));
const list = takeOff.solve(job);
console.log(text(list, { parts: false, digits: 5 }));

const barrier = list.answers.lines.find(({ item }) => item === "barrier");
if (barrier !== undefined) console.log(text(barrier.solution));
