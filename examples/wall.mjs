// The order list of one wall, and how one of its figures came about.
import { readFile } from "node:fs/promises";
import { text } from "settingbed/render";
import { takeOff } from "settingbed/takeoff";

const file = await readFile(new URL("wall.json", import.meta.url), "utf8");
const list = takeOff.try(JSON.parse(file));

if (list.ok) {
  console.log(text(list.solution, { parts: false, digits: 5 }));
  const barrier = list.solution.answers.lines.find(({ item }) => item === "barrier");
  if (barrier !== undefined) console.log(text(barrier.solution));
} else {
  for (const { message } of list.problems) console.error(message);
  process.exitCode = 1;
}
